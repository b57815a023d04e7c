import { zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { mostPhotoBytes } from '../../../src/domain/log/photo-facts.ts';
import { volumesOf } from '../../../src/store/photos/photo-volumes.ts';
import { photosInZip, zipOfPhotos } from '../../../src/store/photos/photo-zip.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { filesInZip } from '../../support/zip-reader.ts';

const note = (digit: string, kept: number, bytes = 10) => ({ ...aPhoto(digit), kept, bytes });
const photo = (digit: string, bytes: readonly number[]) => ({
  ...{ hash: aPhoto(digit).hash, kept: Date.UTC(2026, 2, 2, 9, 30) },
  bytes: new Uint8Array(bytes),
});

test('photos go into files in the order in which they were kept, and a full file stays as it is', () => {
  const [a, b, c, d] = [note('a', 1), note('b', 2), note('c', 3), note('d', 4)];
  const before = volumesOf([c, a, b], 25);
  expect(before.map(({ number, bytes, photos }) => [number, bytes, photos])).toEqual([
    [1, 20, [a, b]],
    [2, 10, [c]],
  ]);
  expect(volumesOf([d, c, b, a], 25)[0]).toEqual(before[0]);
});

test('one that is larger than a file may be has a file of its own, and of none there is none', () => {
  expect(volumesOf([note('a', 1, 99), note('b', 2)], 25)).toHaveLength(2);
  expect(volumesOf([])).toEqual([]);
});

test('another tool opens the file: each photo as it is, with the time at which it was kept (yauzl)', async () => {
  const zip = zipOfPhotos([photo('a', [1, 2, 3]), photo('b', [4])]);
  const files = await filesInZip(zip);
  expect(files.map(({ name, bytes }) => [name, [...bytes]])).toEqual([
    [`${'a'.repeat(64)}.jpg`, [1, 2, 3]],
    [`${'b'.repeat(64)}.jpg`, [4]],
  ]);
  expect(files[0]?.modified.getUTCFullYear()).toBe(2026);
});

test('what was packed is unpacked', () => {
  const found = photosInZip(zipOfPhotos([photo('a', [1, 2, 3]), photo('b', [4])]));
  expect(found?.others).toBe(0);
  expect([...(found?.photos ?? [])]).toEqual([
    [aPhoto('a').hash, new Uint8Array([1, 2, 3])],
    [aPhoto('b').hash, new Uint8Array([4])],
  ]);
});

test('a file of others: what is named otherwise, lies in a folder or is too large is not unpacked', () => {
  const large = new Uint8Array(mostPhotoBytes + 1);
  const zip = zipSync({
    'notes.txt': new Uint8Array([1]),
    [`../${'a'.repeat(64)}.jpg`]: new Uint8Array([1]),
    [`${'A'.repeat(64)}.jpg`]: new Uint8Array([1]),
    [`${'c'.repeat(64)}.jpg`]: large,
    [`${'d'.repeat(64)}.jpg`]: new Uint8Array([7]),
  });
  const found = photosInZip(zip);
  expect(found?.others).toBe(4);
  expect([...(found?.photos.keys() ?? [])]).toEqual([aPhoto('d').hash]);
});

test.each([
  ['nothing', new Uint8Array()],
  ['a text', new TextEncoder().encode('no zip file at all')],
  ['a file that was cut', zipOfPhotos([photo('a', [1, 2, 3])]).slice(0, 60)],
])('%s is no file with photos', (_, bytes) => {
  expect(photosInZip(bytes)).toBeUndefined();
});
