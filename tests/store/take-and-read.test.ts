import fc from 'fast-check';
import { beforeAll, describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { bytesOfBlob } from '../../src/store/backup/gathering.ts';
import { openSealed } from '../../src/store/backup/open-sealed.ts';
import { photoIn } from '../../src/store/backup/sift-photos.ts';
import { writeVolumes } from '../../src/store/backup/write-volumes.ts';
import { openPhotoStore } from '../../src/store/photos/photo-store.ts';
import { type FilesReading, readFiles } from '../../src/store/read-files.ts';
import { takeCopy } from '../../src/store/take-copy.ts';
import { freshName } from '../support/log-makers.ts';
import { hashOf, photoOf, photosOfStore } from './backup/photo-makers.ts';
import { about, linesOf, sampleEntries } from './backup/sample-log.ts';

const entries = sampleEntries();
const log = { kind: 'lines', lines: linesOf(entries) } as const;
const nothing = { kind: 'lines', lines: [] } as const;
const photos = [40_000, 70_000, 300, 120_000, 66_000, 90_000].map((length, number) =>
  photoOf(number, length),
);
const hashes = photos.map(({ hash }) => hash);

/** A tablet that holds these photos. */
async function tabletWith(some: readonly ReturnType<typeof photoOf>[]): Promise<string> {
  const name = freshName();
  const store = openPhotoStore(name);
  for (const [at, { hash, bytes }] of some.entries())
    await store.keep(
      { facts: { hash, width: 10, height: 10, bytes: bytes.length }, bytes, small: bytes.slice(0, 1) },
      at,
    );
  store.close();
  return name;
}

const read = (
  files: readonly Blob[],
  held: string | null = null,
  here: typeof log | typeof nothing = nothing,
) => readFiles({ files, log: here, photos: held });

function offered(reading: FilesReading) {
  if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
  if (!reading.photos) throw new Error('no photos');
  return { ...reading, photos: reading.photos };
}

/** In three files or more: the log and the first photos, and what does not fit beside them. */
let volumes: readonly Blob[];
beforeAll(async () => {
  const written = await writeVolumes({ entries, about, photos: photosOfStore(photos).source, most: 160_000 });
  volumes = written.volumes.map(({ content }) => content);
  expect(volumes.length).toBeGreaterThan(2);
});

describe('a copy of a tablet with photos', () => {
  test('has all that the tablet has, in the order in which they were kept, and comes to the same on another', async () => {
    const taken = await takeCopy({ log, least: entries.length, about, photos: await tabletWith(photos) });
    expect(taken).toMatchObject({ entries: entries.length, leftOut: 0, words: null });
    const files = taken.volumes.map(({ content }) => content);
    const { photos: found, preview } = offered(await read(files));
    expect(preview).toMatchObject({ adds: entries.length, here: 0, unreadable: 0 });
    expect(found.fresh.map(({ hash }) => hash)).toEqual(hashes);
    expect(found).toMatchObject({ here: [], damaged: 0, elsewhere: 0, missing: [], changed: false });
    for (const { file, ...photo } of found.fresh) {
      const bytes = await photoIn(files[file] ?? new Blob(), photo);
      expect(bytes && hashOf(bytes)).toBe(photo.hash);
    }
  });

  test('says of photos that are here already that they are', async () => {
    const held = await tabletWith(photos.slice(0, 2));
    const { photos: found, preview } = offered(await read(volumes, held, log));
    expect(new Set(found.here)).toEqual(new Set(hashes.slice(0, 2)));
    expect(found.fresh.map(({ hash }) => hash)).toEqual(hashes.slice(2));
    expect(preview).toMatchObject({ adds: 0, here: entries.length });
  });

  test('leaves out a photo whose bytes on the tablet are not what they were, and says so', async () => {
    const [first, ...rest] = photos;
    if (!first) throw new Error('no photo');
    const spoilt = { hash: first.hash, bytes: first.bytes.map((byte) => byte ^ 4) };
    const job = { log, least: entries.length, about, photos: await tabletWith([spoilt, ...rest]) };
    const taken = await takeCopy(job);
    expect(taken.leftOut).toBe(1);
    const { photos: found } = offered(await read(taken.volumes.map(({ content }) => content)));
    expect(found.fresh.map(({ hash }) => hash)).toEqual(hashes.slice(1));
    expect(found.damaged).toBe(0);
  });

  test('sealed is the same once it is opened, all its files by the same words', {
    timeout: 120_000,
  }, async () => {
    const held = await tabletWith(photos.slice(0, 3));
    const job = { log, least: entries.length, about, photos: held };
    const [plain, taken] = [await takeCopy(job), await takeCopy({ ...job, passphrase: 'beech and brass' })];
    for (const secret of [{ passphrase: 'beech and brass' }, { words: taken.words ?? [] }])
      for (const [at, { content }] of taken.volumes.entries()) {
        expect(await read([content])).toEqual({ kind: 'refused', why: 'sealed', at: [0] });
        const opened = await openSealed(content, secret);
        if (opened.kind !== 'opened') throw new Error(opened.why);
        const same = Buffer.from(await bytesOfBlob(opened.content));
        expect(same.equals(await bytesOfBlob(plain.volumes[at]?.content ?? new Blob()))).toBe(true);
      }
  });
});

describe('the files of a copy', () => {
  test('are taken together in any order, and what is missing is named', async () => {
    await fc.assert(
      fc.asyncProperty(fc.shuffledSubarray([...volumes.keys()], { minLength: 1 }), async (some) => {
        const files = some.map((at) => volumes[at] ?? new Blob());
        const { photos: found, preview, cut, digestFits } = offered(await read(files));
        const missing = [...volumes.keys()].filter((at) => !some.includes(at));
        expect(found.missing).toEqual(missing.map((at) => at + 1));
        expect(found.volumes).toBe(volumes.length);
        expect(found.fresh.length + found.elsewhere).toBe(photos.length);
        expect(found.damaged).toBe(0);
        expect(found.elsewhere === 0).toBe(missing.length === 0);
        expect(preview.adds).toBe(some.includes(0) ? entries.length : 0);
        expect([cut, digestFits]).toEqual([false, true]);
      }),
      { numRuns: 20 },
    );
  });

  test('of two shops are not mixed, and one that is no copy is named', async () => {
    const list = new Blob(['milk, eggs']);
    const [first = list, second = list] = volumes;
    expect(await read([second, first, list])).toEqual({ kind: 'refused', why: 'not-a-backup', at: [2] });
    expect(await read([first, second, first])).toEqual({ kind: 'refused', why: 'several', at: [2] });
    const newer = await writeVolumes({ entries, about, photos: photosOfStore([]).source });
    expect(await read([newer.volumes[0]?.content ?? list, first])).toMatchObject({ why: 'several' });
  });
});

describe('a copy with photos that is damaged', () => {
  async function whole() {
    const { volumes: one } = await writeVolumes({ entries, about, photos: photosOfStore(photos).source });
    return bytesOfBlob(one[0]?.content ?? new Blob());
  }

  test('gives all of its log and the photos before the cut, wherever in them it was cut', async () => {
    const bytes = await whole();
    const next = seededRandom(Number(process.env.SEED));
    const photosFrom = bytes.length - photos.reduce((sum, { bytes: its }) => sum + its.length + 120, 0);
    for (let tries = 0; tries < 12; tries += 1) {
      const length = Math.floor(photosFrom + next() * (bytes.length - photosFrom - 60));
      const {
        photos: found,
        preview,
        unreadable,
      } = offered(await read([new Blob([bytes.slice(0, length)])]));
      expect([preview.adds, unreadable]).toEqual([entries.length, []]);
      expect(hashes.slice(0, found.fresh.length)).toEqual(found.fresh.map(({ hash }) => hash));
      expect(found.fresh.length + found.damaged).toBe(photos.length);
      expect(found.damaged).toBeGreaterThan(0);
    }
  });

  test('loses one photo for one byte, and nothing of its log', async () => {
    const bytes = await whole();
    const next = seededRandom(Number(process.env.SEED) + 1);
    const photosFrom = bytes.length - photos.reduce((sum, { bytes: its }) => sum + its.length, 0);
    for (let tries = 0; tries < 30; tries += 1) {
      const spoilt = bytes.slice();
      const at = Math.floor(photosFrom + next() * (bytes.length - photosFrom));
      spoilt[at] = (spoilt[at] ?? 0) ^ (1 << Math.floor(next() * 8));
      const { photos: found, preview } = offered(await read([new Blob([spoilt])]));
      expect(preview.adds, `byte ${at}`).toBe(entries.length);
      expect([found.fresh.length, found.damaged], `byte ${at}`).toEqual([photos.length - 1, 1]);
    }
  });

  test('that lost its first line gives its log and its photos', async () => {
    const bytes = await whole();
    const spoilt = bytes.slice();
    spoilt.fill(0x55, 30, 60);
    const reading = offered(await read([new Blob([spoilt])]));
    expect(reading.manifest).toBeNull();
    expect(reading.preview.adds).toBe(entries.length);
    expect(reading.photos.fresh).toHaveLength(photos.length);
  });

  test('whose photos were taken out or put in by another hand is told from one that was not', async () => {
    const bytes = await whole();
    const stranger = await writeVolumes({
      entries: [],
      about,
      photos: photosOfStore([photoOf(99, 500)]).source,
    });
    const [its = new Blob()] = stranger.volumes.map(({ content }) => content);
    const both = new Blob([bytes, await bytesOfBlob(its)]);
    const reading = offered(await read([both]));
    expect(reading.photos.fresh).toHaveLength(photos.length + 1);
    expect(reading.photos.changed).toBe(true);
  });
});
