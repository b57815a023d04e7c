import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gunzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bytesOfBlob } from '../../../src/store/backup/gathering.ts';
import { nextMember } from '../../../src/store/backup/gzip-members.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';
import { readPacked } from '../../../src/store/backup/read-packed.ts';
import { photoIn, siftPhotos } from '../../../src/store/backup/sift-photos.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { writeVolumes } from '../../../src/store/backup/write-volumes.ts';
import { longLog } from '../../support/long-logs.ts';
import { photoOf, photosOfStore } from './photo-makers.ts';
import { about, sampleEntries, text } from './sample-log.ts';
import { unchangedLog } from './unchanged-log.ts';

const entries = sampleEntries();
const log = writeBackup({ entries, about });
const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
/** Of one byte, of a whole piece and its neighbours, of several pieces, and of the usual size. */
const sizes = [1, 65_497, 65_498, 65_499, 200_000, 300_000];
const photos = sizes.map((size, number) => photoOf(number, size));

async function written(some = photos, most?: number) {
  const { source, held, notes } = photosOfStore(some);
  const { volumes, leftOut } = await writeVolumes({ entries, about, photos: source, ...(most && { most }) });
  const files = await Promise.all(volumes.map(({ content }) => bytesOfBlob(content)));
  return { volumes, leftOut, files, held, notes };
}

const only = (files: readonly Uint8Array<ArrayBuffer>[]): Uint8Array<ArrayBuffer> => {
  expect(files).toHaveLength(1);
  return files[0] ?? new Uint8Array();
};

/** A gzip file by RFC 1952 alone: its members' extra fields, each by its mark, in their order. */
function extraFields(file: Uint8Array): readonly { mark: string; bytes: Uint8Array }[] {
  const bytes = Buffer.from(file);
  const fields: { mark: string; bytes: Uint8Array }[] = [];
  for (let at = bytes.indexOf(Buffer.from([0x1f, 0x8b, 8, 4])); at !== -1; ) {
    const length = bytes.readUInt16LE(at + 10);
    const field = bytes.subarray(at + 12, at + 12 + length);
    fields.push({ mark: field.toString('latin1', 0, 2), bytes: field.subarray(4) });
    expect(field.readUInt16LE(2)).toBe(length - 4);
    at = bytes.indexOf(Buffer.from([0x1f, 0x8b, 8, 4]), at + 12 + length);
  }
  return fields;
}

describe('a copy without photos', () => {
  test('is the file that it always was, byte for byte', async () => {
    const unchanged = { entries: unchangedLog(), about };
    // Written by the code from before there were photos in copies; it has a packed part.
    const before = 'd698912c6697507da0ccf7feec818c2772005d9fcc9c729a650ba1baf9dff299';
    expect(sha256(writeBackup(unchanged))).toBe(before);
    const { volumes } = await writeVolumes({ ...unchanged, photos: photosOfStore([]).source });
    expect(volumes.map(({ photos: its }) => its)).toEqual([[]]);
    const [file] = await Promise.all(volumes.map(({ content }) => bytesOfBlob(content)));
    expect(sha256(file ?? new Uint8Array())).toBe(before);
  });
});

describe('a copy with photos', () => {
  test('gives zlib and the gunzip of the system the lines that it gives without them', async () => {
    const { files } = await written();
    const file = only(files);
    const lines = (bytes: Uint8Array) => text.decode(bytes).split('\n').slice(1);
    expect(lines(gunzipSync(file))).toEqual(lines(gunzipSync(log)));
    const folder = mkdtempSync(join(tmpdir(), 'photo-copy-'));
    try {
      writeFileSync(join(folder, 'copy.jsonl.gz'), file);
      const out = execFileSync('gzip', ['-dc', join(folder, 'copy.jsonl.gz')], { maxBuffer: 1e9 });
      expect(lines(out)).toEqual(lines(gunzipSync(log)));
      execFileSync('gzip', ['-t', join(folder, 'copy.jsonl.gz')]);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });

  test('says in its first line how many there are, of how many bytes, and what their digest is (node:crypto)', async () => {
    const { files } = await written();
    const [first = ''] = text.decode(gunzipSync(only(files))).split('\n', 1);
    const { photos: said } = JSON.parse(first);
    expect(said).toMatchObject({ form: 1, volume: 1, volumes: 1, photos: photos.length, all: photos.length });
    expect(said.bytes).toBe(sizes.reduce((sum, size) => sum + size, 0));
    expect(said.digest).toBe(sha256(Buffer.concat(photos.map(({ hash }) => Buffer.from(hash, 'hex')))));
  });

  test('carries each photo byte for byte, as its description says: put together again by RFC 1952 alone', async () => {
    const { files } = await written();
    const pieces = extraFields(only(files)).filter(({ mark }) => mark === 'Tp');
    const found = new Map<string, Uint8Array[]>();
    for (const { bytes } of pieces) {
      const hash = Buffer.from(bytes.subarray(0, 32)).toString('hex');
      const its = found.get(hash) ?? [];
      found.set(hash, its);
      expect(bytes[32]).toBe(its.length);
      its.push(bytes.subarray(34));
    }
    expect([...found.keys()]).toEqual(photos.map(({ hash }) => hash));
    for (const [hash, its] of found) expect(sha256(Buffer.concat(its))).toBe(hash);
  });

  test('is read by readers that know of no photos as if there were none, also by its packed part', async () => {
    const long = longLog(900);
    const { source } = photosOfStore(photos);
    const { volumes } = await writeVolumes({ entries: long, about, photos: source });
    const [file] = await Promise.all(volumes.map(({ content }) => bytesOfBlob(content)));
    if (!file) throw new Error('no file');
    expect(readBackup(file)).toMatchObject({ cut: false, digestFits: true, unreadable: [] });
    const packed = await readPacked(file);
    expect(packed?.parcel.runs.length).toBeGreaterThan(0);
    expect(packed?.parcel).toEqual((await readPacked(writeBackup({ entries: long, about })))?.parcel);
  });

  test('is sifted into its photos and the file as it is without them', async () => {
    const { files } = await written();
    const file = new Blob([only(files)]);
    const { rest, photos: placed, broken } = await siftPhotos(file);
    expect(broken).toBe(0);
    expect(placed.map(({ hash }) => hash)).toEqual(photos.map(({ hash }) => hash));
    for (const [at, place] of placed.entries())
      expect(
        Buffer.from((await photoIn(file, place)) ?? []).equals(photos[at]?.bytes ?? new Uint8Array()),
      ).toBe(true);
    const { rest: withoutAny } = await siftPhotos(new Blob([Uint8Array.from(log)]));
    const afterFirstLine = (bytes: Uint8Array) => Buffer.from(bytes.subarray(nextMember(bytes, 1)));
    const [sifted, usual] = [await bytesOfBlob(rest), await bytesOfBlob(withoutAny)];
    expect(afterFirstLine(sifted).equals(afterFirstLine(usual))).toBe(true);
  });

  test('holds one photo at a time, and leaves out what is gone or is not what it was', async () => {
    const { source, held, notes } = photosOfStore(photos);
    const [gone, changed] = photos;
    if (!gone || !changed) throw new Error('no photos');
    held.delete(gone.hash);
    held.set(
      changed.hash,
      changed.bytes.map((byte) => byte ^ 1),
    );
    const { volumes, leftOut } = await writeVolumes({ entries, about, photos: source });
    expect(leftOut).toBe(2);
    expect(volumes[0]?.photos).toEqual(photos.slice(2).map(({ hash }) => hash));
    expect(notes.most).toBe(1);
  });
});

describe('photos that do not fit into one file', () => {
  test('go into numbered ones, none of which is larger than it may be, and each photo into one of them', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 1, max: 90_000 }), { maxLength: 12 }),
        fc.integer({ min: 130_000, max: 400_000 }),
        async (lengths, most) => {
          const some = lengths.map((length, number) => photoOf(number, length));
          const { volumes, files } = await written(some, most);
          expect(volumes.flatMap((volume) => volume.photos)).toEqual(some.map(({ hash }) => hash));
          for (const file of files) expect(file.length).toBeLessThanOrEqual(most);
          const heads = files.map((file) =>
            JSON.parse(text.decode(gunzipSync(file)).split('\n', 1)[0] ?? ''),
          );
          const saids = heads.map(({ photos: said }) => said);
          if (some.length > 0) {
            expect(saids.map(({ volume }) => volume)).toEqual(files.map((_, index) => index + 1));
            expect(new Set(saids.map(({ set, volumes: of }) => `${set} ${of}`)).size).toBe(1);
          }
          expect(heads.map(({ tallywright }) => tallywright)).toEqual(
            files.map((_, index) => (index === 0 ? 'log' : 'photos')),
          );
        },
      ),
      { numRuns: 25 },
    );
  });

  test('leave the first file to a log that alone is larger than a file may be', async () => {
    const { volumes, files } = await written(photos, 1000);
    expect(volumes[0]?.photos).toEqual([]);
    expect(volumes).toHaveLength(1 + photos.length);
    expect(readBackup(files[0] ?? new Uint8Array())).toMatchObject({ digestFits: true, cut: false });
    expect(readBackup(files[1] ?? new Uint8Array())).toEqual({ kind: 'refused', why: 'not-a-backup' });
  });
});
