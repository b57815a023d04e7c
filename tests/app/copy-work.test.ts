import { describe, expect, test } from 'vitest';
import { copyWork, type StartWorker } from '../../src/app/copy-work.ts';
import { chained } from '../../src/domain/log/chain.ts';
import { copyJobs } from '../../src/store/copy-jobs.ts';
import { memoryShelf } from '../../src/store/memory-shelf.ts';
import type { FromWorker, ToWorker } from '../../src/worker/log-protocol.ts';
import { foreignLog } from '../support/drafts.ts';

const whole = chained(foreignLog());
const about = { version: '1', wall: 0, zone: 'UTC', shop: 'Hafts' };
const log = { kind: 'entries', entries: whole } as const;
const least = whole.length;
const order = { log, least, about, day: '2026-03-02', kind: 'usual' } as const;

/** A worker that answers as a test tells it; what it was told and whether it was ended are noted. */
function workerThat(answer: (message: ToWorker, say: (message: FromWorker) => void) => void) {
  const told: ToWorker[] = [];
  const world = { ended: false, fail: (_message: string) => {} };
  const start = (() => {
    let say = (_message: FromWorker) => {};
    return {
      postMessage(message: ToWorker) {
        told.push(message);
        queueMicrotask(() => answer(message, (reply) => say(reply)));
      },
      addEventListener(kind: string, listen: (event: object) => void) {
        if (kind === 'message') say = (data) => listen({ data });
        else world.fail = (message) => listen({ message });
      },
      terminate() {
        world.ended = true;
      },
    };
  }) as unknown as StartWorker;
  return { start, told, world };
}

test('without workers the work is done in the window', async () => {
  const shelf = memoryShelf();
  const work = copyWork(shelf);
  expect(await work.keep(order)).toMatchObject({ kind: 'kept', entries: whole.length });
  const [name = ''] = await shelf.names();
  const bytes = (await shelf.read(name)) ?? new Uint8Array();
  expect({ bytes, entries: least }).toEqual(await work.write(order));
  const here = { kind: 'entries', entries: whole.slice(0, 4) } as const;
  const reading = await work.read({ files: [new Blob([Uint8Array.from(bytes)])], log: here, photos: null });
  expect(reading).toMatchObject({ held: 4, preview: { adds: whole.length - 4, here: 4 } });
});

describe('a worker', () => {
  test('is given the log in lines, asks the window for its shelf, and ends with its job', async () => {
    const shelf = memoryShelf(new Map([['copy.gz', Uint8Array.of(7)]]));
    const { start, told, world } = workerThat((message, say) => {
      if (message.kind === 'job') say({ kind: 'shelf', call: 1, method: 'read', args: ['copy.gz'] });
      if (message.kind === 'answer') say({ kind: 'done', result: message.result });
    });
    expect(await copyWork(shelf, start).keep(order)).toEqual(Uint8Array.of(7));
    const lines = told.flatMap((message) => (message.kind === 'lines' ? message.lines : []));
    expect(lines).toEqual(whole.map((entry) => JSON.stringify(entry)));
    expect(told.find(({ kind }) => kind === 'job')).toMatchObject({
      ...{ name: 'keep', input: { about, least, day: order.day, log: { kind: 'lines', lines: [] } } },
    });
    expect(world.ended).toBe(true);
  });

  test('opens a store by itself: the window names it, and gives no entry', async () => {
    const { start, told } = workerThat((_message, say) => say({ kind: 'done', result: 'kept' }));
    const inStore = { ...order, log: { kind: 'store', name: 'hafts' } } as const;
    expect(await copyWork(memoryShelf(), start).keep(inStore)).toBe('kept');
    expect(told).toEqual([{ kind: 'job', name: 'keep', input: inStore }]);
  });

  test('hears of what the shelf refuses', async () => {
    const { start } = workerThat((message, say) => {
      if (message.kind === 'job') say({ kind: 'shelf', call: 1, method: 'names', args: [] });
      if (message.kind === 'refusal') say({ kind: 'failed', problem: message.problem });
    });
    const shelf = { ...memoryShelf(), names: () => Promise.reject(new Error('the disk is full')) };
    await expect(copyWork(shelf, start).keep(order)).rejects.toThrow('the disk is full');
    await expect(copyWork(null, start).keep(order)).rejects.toThrow('no shelf');
  });

  test('that dies fails its job and is ended', async () => {
    const { start, world } = workerThat(() => world.fail('out of memory'));
    await expect(copyWork(null, start).write(order)).rejects.toThrow('out of memory');
    expect(world.ended).toBe(true);
  });
});

describe('a worker that stands ready', () => {
  /** Workers that answer each job; which were begun and which have ended. */
  function workers() {
    const begun: { ended: boolean; fail: () => void }[] = [];
    const start = (() => {
      const one = workerThat(
        (message, say) => message.kind === 'job' && say({ kind: 'done', result: begun.length }),
      );
      begun.push(Object.assign(one.world, { fail: () => one.world.fail('no code came') }));
      return one.start();
    }) as StartWorker;
    return { start, begun };
  }
  const job = { bytes: new Uint8Array() };

  test('does the next job and no other', async () => {
    const { start, begun } = workers();
    const work = copyWork(null, start);
    work.ahead();
    expect(begun.length).toBe(1);
    expect(await work.look(job)).toBe(1);
    expect(begun.length).toBe(1);
    expect(await work.look(job)).toBe(2);
    expect(begun.map(({ ended }) => ended)).toEqual([true, true]);
  });

  test('is let go when there is no job for it, and not from under one that has it', async () => {
    const { start, begun } = workers();
    const work = copyWork(null, start);
    work.ahead()();
    expect(begun.map(({ ended }) => ended)).toEqual([true]);
    const letGo = work.ahead();
    const looked = work.look(job);
    letGo();
    expect(begun[1]?.ended).toBe(false);
    expect(await looked).toBe(2);
  });

  test('whose code did not come is not asked', async () => {
    const { start, begun } = workers();
    const work = copyWork(null, start);
    work.ahead();
    begun[0]?.fail();
    expect(await work.look(job)).toBe(2);
  });
});

test('a copy cannot be kept without a shelf', async () => {
  const job = { ...order, log: { kind: 'lines', lines: [] } } as const;
  expect(await copyJobs(null).keep(job)).toMatchObject({ kind: 'failed', why: 'shelf' });
});
