import { describe, expect, test } from 'vitest';
import { filesWorker, NoFilesKept } from '../../src/store/files-worker.ts';
import { openTwin } from '../../src/store/open-twin.ts';
import type { Folder } from '../../src/worker/journal/folder.ts';
import { type FakeDisk, fakeWindow } from '../support/fake-folder.ts';
import { type FakeWorker, fakeWorker } from '../support/fake-worker.ts';
import { handClock } from '../support/hand-clock.ts';
import { settled } from '../support/settled.ts';
import { testStorage } from '../support/twin-makers.ts';

type OpenFolder = (name: string) => Promise<Folder | undefined>;
const fine = (): OpenFolder => fakeWindow(new Map() as FakeDisk).openFolder;
const silent: OpenFolder = () => new Promise(() => {});

/** A window whose first worker has the first folder, its second the second, and so on. */
function aWindow(...folders: readonly OpenFolder[]) {
  const clock = handClock();
  const workers: FakeWorker[] = [];
  let ended = 0;
  const parts = {
    store: 'tallywright',
    after: clock.timer.after,
    start: () => {
      const openFolder = folders[workers.length] ?? fine();
      const worker = fakeWorker({ openFolder, ended: () => (ended += 1) });
      workers.push(worker);
      return worker;
    },
  };
  return { clock, workers, parts, files: filesWorker(parts), ended: () => ended };
}
const passSeconds = async (clock: ReturnType<typeof handClock>, seconds: number) => {
  for (let second = 0; second < seconds; second += 1) {
    clock.pass(1000);
    await settled();
  }
};

describe('a journal worker', () => {
  test('is started at the first request, and once', async () => {
    const { files, workers } = aWindow();
    expect(workers).toHaveLength(0);
    await Promise.all([files.ask('look', {}), files.ask('heads', {})]);
    expect(workers).toHaveLength(1);
  });

  test('that is silent for five seconds is ended, and the next request makes a new one', async () => {
    const { files, clock, workers, ended } = aWindow(silent);
    const asked = Promise.allSettled([files.ask('look', {}), files.ask('heads', {})]);
    await passSeconds(clock, 4);
    expect(ended()).toBe(0);
    await passSeconds(clock, 1);
    expect((await asked).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    expect(ended()).toBe(1);
    await files.ask('look', {});
    expect(workers).toHaveLength(2);
  });

  test('that says it is at work is waited for, however long it takes', async () => {
    const { files, clock, workers, ended } = aWindow(silent);
    const refused = expect(files.ask('look', {})).rejects.toThrow('silent');
    for (let round = 0; round < 10; round += 1) {
      await passSeconds(clock, 4);
      workers[0]?.happens('message', { kind: 'busy' });
    }
    expect(ended()).toBe(0);
    await passSeconds(clock, 5);
    await refused;
  });

  test('is not taken for silent because its window was frozen for an hour', async () => {
    const { files, clock, ended } = aWindow(silent);
    const refused = expect(files.ask('look', {})).rejects.toThrow('silent');
    clock.pass(3_600_000);
    await settled();
    expect(ended()).toBe(0);
    await passSeconds(clock, 4);
    await refused;
  });

  test('that was ended ends no other, whatever it says late', async () => {
    const { files, clock, workers, ended } = aWindow(silent, silent);
    const refused = expect(files.ask('look', {})).rejects.toThrow('silent');
    await passSeconds(clock, 5);
    await refused;
    const asked = files.ask('heads', {});
    workers[0]?.happens('error');
    workers[0]?.happens('message', { kind: 'done', id: 2, value: ['0'.repeat(32)] });
    workers[1]?.happens('message', { kind: 'done', id: 2, value: [] });
    expect(await asked).toEqual([]);
    expect(ended()).toBe(1);
  });

  test('from which nothing is wanted is left alone', async () => {
    const { files, clock, ended } = aWindow();
    await files.ask('look', {});
    await passSeconds(clock, 20);
    expect(ended()).toBe(0);
  });

  test.each(['error', 'messageerror'] as const)('that has an %s rejects all that waits', async (type) => {
    const { files, workers, ended } = aWindow(silent);
    const asked = Promise.allSettled([files.ask('look', {}), files.ask('settle-act', { act: 'tap-1' })]);
    await settled();
    workers[0]?.happens(type);
    expect((await asked).map(({ status }) => status)).toEqual(['rejected', 'rejected']);
    expect(ended()).toBe(1);
    expect((await files.ask('look', {})).unsettled).toEqual([]);
  });

  test.each([undefined, 'hello', { kind: 'done' }, { kind: 'sung', id: 1 }])(
    'that says %j is ended',
    async (said) => {
      const { files, workers, ended } = aWindow(silent);
      const asked = files.ask('look', {});
      workers[0]?.happens('message', said);
      await expect(asked).rejects.toThrow();
      expect(ended()).toBe(1);
    },
  );

  test('whose answer is none to what was asked has not answered', async () => {
    const { files, workers } = aWindow(silent);
    const asked = files.ask('heads', {});
    workers[0]?.happens('message', { kind: 'done', id: 1, value: ['no link'] });
    await expect(asked).rejects.toThrow();
  });

  test('answers what was asked before it was closed, and nothing more', async () => {
    const { files, ended } = aWindow();
    const asked = files.ask('look', {});
    files.close();
    expect((await asked).unreadable).toBe(0);
    expect(ended()).toBe(1);
    await expect(files.ask('look', {})).rejects.toThrow('closed');
  });

  test('whose folder cannot be opened is asked again, and opens it then', async () => {
    let tries = 0;
    const folder = fine();
    const { files } = aWindow((name) => {
      tries += 1;
      return tries === 1 ? Promise.reject(new Error('not now')) : folder(name);
    });
    await expect(files.ask('look', {})).rejects.toThrow('not now');
    expect((await files.ask('look', {})).unreadable).toBe(0);
  });

  test('tells a browser without files from one that fails', async () => {
    const { files } = aWindow(async () => undefined);
    await expect(files.ask('look', {})).rejects.toBeInstanceOf(NoFilesKept);
  });
});

describe('the second copy that is opened', () => {
  const reach = async (opened: ReturnType<typeof openTwin>) => (await (await opened).twin.look()).reach;

  test('is in files where there are any', async () => {
    const { parts } = aWindow();
    const opened = openTwin({ ...parts, storage: testStorage() });
    expect(await reach(opened)).toBe('all');
    expect((await opened).shelf).not.toBeNull();
  });

  test('is a tail where there are none, or no worker, and nothing where that is refused too', async () => {
    const { parts } = aWindow(async () => undefined);
    const without = openTwin({ ...parts, storage: testStorage() });
    expect(await reach(without)).toBe('tail');
    expect((await without).shelf).toBeNull();
    expect(await reach(openTwin({ ...parts, start: undefined, storage: testStorage() }))).toBe('tail');
    const nothing = await openTwin({ ...parts, start: undefined, storage: undefined });
    expect((await nothing.twin.look()).reach).toBe('none');
    await expect(nothing.twin.add({ runs: [], entries: [] })).rejects.toThrow();
  });

  test('is tried twice in files, then stands in the tail until the next start', async () => {
    const broken: OpenFolder = () => Promise.reject(new Error('sick'));
    const { parts } = aWindow(broken, broken);
    const opened = openTwin({ ...parts, storage: testStorage() });
    expect(await reach(opened)).toBe('tail');
    expect((await opened).shelf).not.toBeNull();
  });
});
