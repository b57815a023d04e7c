import { expect, test } from 'vitest';
import { openPhotos, type PhotosParts } from '../../src/app/photos.ts';
import { openPhotoStore } from '../../src/store/photos/photo-store.ts';
import type { FromPhotoWorker, ToPhotoWorker } from '../../src/worker/photo-protocol.ts';
import { aPhoto } from '../support/a-photo.ts';
import { freshName } from '../support/log-makers.ts';
import { filesInZip } from '../support/zip-reader.ts';

const made = (digit: string) => ({
  facts: aPhoto(digit),
  bytes: new Uint8Array([1, 2, 3]),
  small: new Uint8Array([9]),
});

/** A worker that does as it is told when it is told to. */
function aWorker() {
  const target = new EventTarget();
  const asked: ToPhotoWorker[] = [];
  const answer = (data: FromPhotoWorker) =>
    target.dispatchEvent(Object.assign(new Event('message'), { data }));
  let started = 0;
  return {
    asked,
    started: () => started,
    answer,
    breaks: () => target.dispatchEvent(new Event('error')),
    start() {
      started += 1;
      return {
        addEventListener: target.addEventListener.bind(target),
        postMessage: (message: ToPhotoWorker) => asked.push(message),
        terminate() {},
      };
    },
  };
}

const photosWith = (worker: ReturnType<typeof aWorker>, more: Partial<PhotosParts> = {}) =>
  openPhotos({
    store: openPhotoStore(freshName()),
    start: worker.start as unknown as PhotosParts['start'],
    now: () => 5000,
    ...more,
  });

test('a photo is kept once the worker has made it, each answer for its own file', async () => {
  const worker = aWorker();
  const photos = photosWith(worker);
  const first = photos.keep(new Blob(['a']));
  const second = photos.keep(new Blob(['b']));
  worker.answer({ id: 2, kind: 'refused', why: 'too-large' });
  worker.answer({ id: 1, kind: 'made', photo: made('a') });
  expect(await second).toEqual({ kind: 'refused', why: 'too-large' });
  expect(await first).toEqual({ kind: 'kept', photo: aPhoto('a') });
  expect(await photos.notes()).toEqual([{ ...aPhoto('a'), kept: 5000 }]);
  expect((await photos.large(aPhoto('a').hash))?.size).toBe(3);
  expect((await photos.small(aPhoto('a').hash))?.size).toBe(1);
  expect(await photos.large(aPhoto('b').hash)).toBeUndefined();
});

test('a worker that a picture was too much for refuses what it was asked, and the next photo gets a new one', async () => {
  const worker = aWorker();
  const photos = photosWith(worker);
  const lost = photos.keep(new Blob(['a']));
  worker.breaks();
  expect(await lost).toMatchObject({ kind: 'refused', why: 'cannot-be-opened' });
  expect(worker.started()).toBe(1);
  const next = photos.keep(new Blob(['b']));
  worker.answer({ id: worker.asked.at(-1)?.id ?? 0, kind: 'made', photo: made('b') });
  expect(await next).toMatchObject({ kind: 'kept' });
  expect(worker.started()).toBe(2);
});

test('a photo that the tablet has no room for is said not to be kept', async () => {
  const worker = aWorker();
  const store = openPhotoStore(freshName());
  const full = { ...store, keep: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
  const kept = photosWith(worker, { store: full }).keep(new Blob(['a']));
  worker.answer({ id: 1, kind: 'made', photo: made('a') });
  expect(await kept).toEqual({ kind: 'not-kept' });
});

test('a listing is one file with its table and its photos by name, or none when a photo is not here', async () => {
  const store = openPhotoStore(freshName());
  await store.keep(made('a'), 0);
  const photos = photosWith(aWorker(), { store, now: () => Date.UTC(2026, 2, 2, 12) });
  const table = { name: 'listing.csv', text: '\ufeff"Näme"\r\n' };
  const zip = await photos.listing(table, [{ name: 'ash-1.jpg', photo: aPhoto('a').hash }]);
  const files = await filesInZip(new Uint8Array((await zip?.arrayBuffer()) ?? []));
  expect(files.map(({ name, bytes }) => [name, [...bytes]])).toEqual([
    ['listing.csv', [...Buffer.from(table.text)]],
    ['ash-1.jpg', [1, 2, 3]],
  ]);
  expect(files.map(({ modified }) => modified.getUTCFullYear())).toEqual([2026, 2026]);
  expect(await photos.listing(table, [{ name: 'plum-1.jpg', photo: aPhoto('b').hash }])).toBeUndefined();
});
