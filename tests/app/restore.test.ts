import { describe, expect, test } from 'vitest';
import { copyWork } from '../../src/app/copy-work.ts';
import type { CopyResult } from '../../src/app/keeper.ts';
import {
  type CopyFile,
  openRestore,
  type RestoredCopy,
  type RestoredPhotos,
  type RestoreParts,
} from '../../src/app/restore.ts';
import { textOfCopy } from '../../src/app/text-copy.ts';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import { entriesIn } from '../../src/domain/packed/parcel.ts';
import { photoIn } from '../../src/store/backup/sift-photos.ts';
import { writeBackup } from '../../src/store/backup/write-backup.ts';
import { writeVolumes } from '../../src/store/backup/write-volumes.ts';
import { hashOf, photoOf, photosOfStore } from '../store/backup/photo-makers.ts';
import { foreignLog } from '../support/drafts.ts';
import { freshName } from '../support/log-makers.ts';
import { sealBackup } from '../support/sealed-bytes.ts';

const whole = chained(foreignLog());
const about = {
  version: '1.2.3',
  wall: Date.UTC(2026, 2, 2, 17),
  zone: 'Europe/London',
  shop: 'The test shop',
};
const backup = (entries: readonly Entry[]) => writeBackup({ entries, about });

const file = (bytes: Uint8Array, name = 'copy.jsonl.gz'): CopyFile => ({
  name,
  size: bytes.length,
  content: async () => new Blob([Uint8Array.from(bytes)]),
});

/** A log that can be added to, with a shelf that does as it is told. */
function aLog(held: readonly Entry[] = [], photos: RestoreParts['photos'] = null) {
  const log = new Map(held.map((entry) => [entry.link, entry]));
  const kept: CopyResult[] = [];
  const done: RestoredCopy[] = [];
  const coming: RestoredPhotos[] = [];
  const world = {
    copy: { kind: 'kept', entries: held.length } as CopyResult,
    /** After so many entries the merge breaks off. */
    breaksAfter: Number.POSITIVE_INFINITY,
  };
  const restoring = openRestore({
    session: {
      entries: async () => [...log.values()],
      async restore(parcel) {
        const entries = entriesIn(parcel);
        const fresh = entries.filter(({ link }) => !log.has(link));
        for (const entry of fresh.slice(0, world.breaksAfter)) log.set(entry.link, entry);
        if (fresh.length > world.breaksAfter) throw new Error('the store is gone');
        return { added: fresh.length, here: entries.length - fresh.length, unplaced: 0 };
      },
    },
    work: copyWork(null, undefined),
    photos,
    log: async () => ({ kind: 'entries', entries: [...log.values()] }),
    async keepBefore() {
      kept.push(world.copy);
      return world.copy;
    },
    onDone: (restored) => done.push(restored),
    onPhotos: (each) => coming.push(each),
  });
  return { restoring, log, kept, done, coming, world };
}

const offerOf = ({ restoring }: ReturnType<typeof aLog>) => {
  const { value } = restoring.step;
  return value.kind === 'offered' ? value.offer : undefined;
};

describe('a copy', () => {
  test('shows what it is and what it would add, and adds just that', async () => {
    const half = whole.slice(0, Math.floor(whole.length / 2));
    const into = aLog(half);
    await into.restoring.read([file(backup(whole))]);
    expect(offerOf(into)).toMatchObject({
      file: 'copy.jsonl.gz',
      shop: 'The test shop',
      made: about.wall,
      damage: 'none',
      foreign: false,
      preview: { adds: whole.length - half.length, here: half.length, unreadable: 0 },
    });
    expect(into.log.size).toBe(half.length);
    await into.restoring.add();
    expect(into.done).toEqual([
      { added: whole.length - half.length, here: half.length, unplaced: 0, unreadable: 0 },
    ]);
    expect([...into.log.values()].toSorted((a, b) => a.event.seq - b.event.seq)).toEqual(whole);
    expect(into.kept).toHaveLength(1);
    expect(into.restoring.step.value.kind).toBe('choose');
  });

  test('that is here already would add nothing', async () => {
    const into = aLog(whole);
    await into.restoring.read([file(backup(whole.slice(0, 9)))]);
    expect(offerOf(into)?.preview).toMatchObject({ adds: 0, here: 9 });
  });

  test('into an empty log needs no copy of it first', async () => {
    const into = aLog();
    into.world.copy = { kind: 'failed' };
    await into.restoring.read([file(backup(whole))]);
    expect(offerOf(into)?.foreign).toBe(false);
    await into.restoring.add();
    expect(into.kept).toEqual([]);
    expect(into.done[0]).toMatchObject({ added: whole.length });
  });

  test('of another shop is pointed out', async () => {
    const into = aLog(chained(foreignLog('station-b')));
    await into.restoring.read([file(backup(whole))]);
    expect(offerOf(into)?.foreign).toBe(true);
  });

  test('that was cut offers what is sound', async () => {
    const into = aLog(whole.slice(0, 2));
    const bytes = backup(whole);
    await into.restoring.read([file(bytes.subarray(0, bytes.length - 200))]);
    const offer = offerOf(into);
    expect(offer?.damage).toBe('cut');
    expect(offer?.preview.adds).toBeGreaterThan(0);
    expect(offer?.preview.adds).toBeLessThan(whole.length - 2);
  });

  test('that was changed is told from a sound one, with the lines that cannot be read', async () => {
    const into = aLog();
    const lines = new TextDecoder().decode(await plain(backup(whole))).split('\n');
    lines[3] = lines[3]?.replace('"pieces":', '"piecez":') ?? '';
    lines[4] = lines[4]?.replace('Europe', 'Eur\u202eope') ?? '';
    await into.restoring.read([file(new TextEncoder().encode(lines.join('\n')))]);
    const offer = offerOf(into);
    expect(offer?.damage).toBe('changed');
    expect(offer?.preview.unreadable).toBeGreaterThan(0);
    expect(offer?.problems[0]?.line).toBeGreaterThan(1);
  });

  test('whose names turn the direction of text round shows them without', async () => {
    const into = aLog();
    const bytes = writeBackup({ entries: whole, about: { ...about, shop: 'Shop \u202egnp' } });
    await into.restoring.read([file(bytes, 'copy\u202egpj.gz')]);
    expect(offerOf(into)).toMatchObject({ shop: 'Shop gnp', file: 'copygpj.gz' });
  });

  test('carried as a text file is read as the file it is', async () => {
    const into = aLog();
    await into.restoring.read([file(new TextEncoder().encode(textOfCopy(backup(whole))), 'note.txt')]);
    expect(offerOf(into)?.preview.adds).toBe(whole.length);
  });
});

async function plain(bytes: Uint8Array): Promise<Uint8Array> {
  const { gunzipSync } = await import('node:zlib');
  return gunzipSync(bytes);
}

describe('a refusal changes nothing and says why', () => {
  test.each([
    ['not a copy', file(new TextEncoder().encode('milk, eggs')), 'not-a-backup'],
    ['empty', file(new Uint8Array()), 'empty'],
    ['too big to be looked at', { ...file(new Uint8Array(3)), size: 3e9 }, 'too-big'],
    ['gone', { name: 'a', size: 1, content: () => Promise.reject(new Error('gone')) }, 'cannot-read'],
  ])('%s', async (_name, given, why) => {
    const into = aLog(whole);
    await into.restoring.read([given]);
    expect(into.restoring.step.value).toMatchObject({ kind: 'refused', why });
    await into.restoring.add();
    expect([into.log.size, into.kept]).toEqual([whole.length, []]);
    into.restoring.startOver();
    expect(into.restoring.step.value).toEqual({ kind: 'choose' });
  });
});

describe('a sealed copy', () => {
  test('is opened by its passphrase or its words, and asks again after a wrong one', async () => {
    const random = (length: number) => crypto.getRandomValues(new Uint8Array(length));
    const { bytes, words } = await sealBackup(backup(whole), { passphrase: 'beech and brass', random });
    for (const secret of [{ passphrase: 'beech and brass' }, { words }]) {
      const into = aLog();
      await into.restoring.read([file(bytes)]);
      expect(into.restoring.step.value).toMatchObject({ kind: 'sealed', refused: null });
      await into.restoring.unseal({ passphrase: 'beech and bras' });
      expect(into.restoring.step.value).toMatchObject({ kind: 'sealed', refused: 'wrong-secret' });
      await into.restoring.unseal(secret);
      expect(offerOf(into)?.preview.adds).toBe(whole.length);
      expect(into.log.size).toBe(0);
    }
  }, 30_000);
});

describe('when something goes wrong on the way', () => {
  test.each(['failed', 'no-shelf', 'busy', 'saving'] as const)(
    'without a copy of the present state (%s) the person says whether to go on',
    async (kind) => {
      const into = aLog(whole.slice(0, 3));
      into.world.copy = { kind };
      await into.restoring.read([file(backup(whole))]);
      await into.restoring.add();
      expect(into.restoring.step.value).toMatchObject({ kind: 'no-copy', why: kind });
      expect(into.log.size).toBe(3);
      await into.restoring.addAllTheSame();
      expect(into.log.size).toBe(whole.length);
    },
  );

  test('a present state that older copies cover is copied well enough', async () => {
    const into = aLog(whole.slice(0, 3));
    into.world.copy = { kind: 'guarded' };
    await into.restoring.read([file(backup(whole))]);
    await into.restoring.add();
    expect(into.done).toHaveLength(1);
  });

  test('a merge that breaks off says how far it came, and goes on from there', async () => {
    const into = aLog(whole.slice(0, 3));
    await into.restoring.read([file(backup(whole))]);
    into.world.breaksAfter = 4;
    await into.restoring.add();
    expect(into.restoring.step.value).toMatchObject({ kind: 'broken-off', inLog: 7 });
    expect(into.done).toEqual([]);
    into.world.breaksAfter = Number.POSITIVE_INFINITY;
    await into.restoring.addAllTheSame();
    expect(into.done[0]).toMatchObject({ added: whole.length - 7, here: 7 });
    expect(into.log.size).toBe(whole.length);
  });

  test('who goes back while a file is read is not drawn forward by it', async () => {
    const into = aLog();
    const reading = into.restoring.read([file(backup(whole))]);
    expect(into.restoring.step.value.kind).toBe('reading');
    into.restoring.startOver();
    await reading;
    expect(into.restoring.step.value).toEqual({ kind: 'choose' });
  });
});

describe('a copy with photos', () => {
  const pictures = [60_000, 90_000, 500].map((length, number) => photoOf(number, length));

  async function filesOf(most: number) {
    const { source } = photosOfStore(pictures);
    const { volumes } = await writeVolumes({ entries: whole, about, photos: source, most });
    return volumes.map(
      ({ content }, at): CopyFile => ({
        ...{ name: `copy-${at + 1}.gz`, size: content.size, content: async () => content },
      }),
    );
  }

  /** A tablet that keeps photos: which came in, and how much of the log was in by then. */
  function keepingPhotos(refuses = 0) {
    const kept: string[] = [];
    const logThen: number[] = [];
    const parts = {
      shop: freshName(),
      async addFrom(files, { fresh }, tell) {
        for (const [at, { file, ...photo }] of fresh.entries()) {
          const bytes = await photoIn(files[file] ?? new Blob(), photo);
          logThen.push(into.log.size);
          if (at >= refuses && bytes) kept.push(hashOf(bytes));
          const refused = Math.min(refuses, at + 1);
          tell({ added: kept.length, refused, left: fresh.length - at - 1 });
        }
      },
    } satisfies RestoreParts['photos'];
    const into = aLog([], parts);
    return { into, kept, logThen };
  }

  test('of several files brings log and photos, in any order, and the log before any photo', async () => {
    const files = await filesOf(130_000);
    expect(files.length).toBeGreaterThan(1);
    const { into, kept, logThen } = keepingPhotos();
    await into.restoring.read(files.toReversed());
    expect(offerOf(into)?.photos).toMatchObject({ here: [], damaged: 0, missing: [], elsewhere: 0 });
    expect(offerOf(into)?.file).toContain('copy-1.gz');
    await into.restoring.add();
    expect(new Set(kept)).toEqual(new Set(pictures.map(({ hash }) => hash)));
    expect(new Set(logThen)).toEqual(new Set([whole.length]));
    expect(into.done[0]).toMatchObject({ added: whole.length, photos: { added: 0, left: 3 } });
    expect(into.coming.map(({ left }) => left)).toEqual([2, 1, 0]);
  });

  test('of which files are missing says which, and the rest comes later by itself', async () => {
    const [first, ...rest] = await filesOf(130_000);
    if (!first) throw new Error('no file');
    const { into, kept } = keepingPhotos();
    await into.restoring.read(rest);
    expect(offerOf(into)?.photos?.missing).toEqual([1]);
    expect(offerOf(into)?.preview.adds).toBe(0);
    await into.restoring.add();
    expect(into.kept).toEqual([]);
    expect(into.done[0]).toMatchObject({ added: 0 });
    const before = kept.length;
    await into.restoring.read([first]);
    await into.restoring.add();
    expect(into.log.size).toBe(whole.length);
    expect([before, kept.length]).toEqual([before, pictures.length]);
  });

  test('says how many photos found no room', async () => {
    const { into } = keepingPhotos(1);
    await into.restoring.read(await filesOf(1_000_000));
    await into.restoring.add();
    expect(into.coming.at(-1)).toMatchObject({ added: 2, refused: 1, left: 0, damaged: 0 });
  });

  test('on a tablet that keeps none brings its log, and says that its photos were not taken', async () => {
    const into = aLog();
    await into.restoring.read(await filesOf(1_000_000));
    await into.restoring.add();
    expect(into.done[0]).toMatchObject({ added: whole.length, photos: { refused: 3, left: 0 } });
  });
});
