import { expect, test, vi } from 'vitest';
import type { PhotoHash } from '../../../src/domain/log/photo-facts.ts';
import { openPhotoStore } from '../../../src/store/photos/photo-store.ts';
import { aPhoto } from '../../support/a-photo.ts';
import { freshName } from '../../support/log-makers.ts';

const photo = (digit: string, bytes = [1, 2, 3]) => ({
  facts: aPhoto(digit),
  bytes: new Uint8Array(bytes),
  small: new Uint8Array([9]),
});

test('a photo is given back as it was kept, large and small, also after the store was opened anew', async () => {
  const name = freshName();
  const before = openPhotoStore(name);
  await before.keep(photo('a'), 1000);
  before.close();
  const after = openPhotoStore(name);
  const { hash } = aPhoto('a');
  expect(await after.bytes(hash)).toEqual(new Uint8Array([1, 2, 3]));
  expect(await after.small(hash)).toEqual(new Uint8Array([9]));
  expect(await after.notes()).toEqual([{ ...aPhoto('a'), kept: 1000 }]);
});

test('the same photo twice is kept once', async () => {
  const store = openPhotoStore(freshName());
  await store.keep(photo('a'), 1);
  await store.keep(photo('a'), 2);
  expect(await store.notes()).toHaveLength(1);
});

test('what is let go is gone, and the others stay', async () => {
  const store = openPhotoStore(freshName());
  await store.keep(photo('a'), 1);
  await store.keep(photo('b'), 1);
  await store.letGo([aPhoto('a').hash, aPhoto('c').hash]);
  expect(await store.bytes(aPhoto('a').hash)).toBeUndefined();
  expect(await store.small(aPhoto('a').hash)).toBeUndefined();
  expect((await store.notes()).map(({ hash }): PhotoHash => hash)).toEqual([aPhoto('b').hash]);
});

test('that photos went out in a file is kept with them, and says nothing of others', async () => {
  const name = freshName();
  const store = openPhotoStore(name);
  await store.keep(photo('a'), 1);
  await store.keep(photo('b'), 2);
  await store.wentOut([aPhoto('a').hash, aPhoto('c').hash], 70);
  store.close();
  const notes = await openPhotoStore(name).notes();
  expect(notes.toSorted((a, b) => a.kept - b.kept)).toEqual([
    { ...aPhoto('a'), kept: 1, out: 70 },
    { ...aPhoto('b'), kept: 2 },
  ]);
});

test('two shops on one tablet have photos of their own', async () => {
  const [own, demo] = [openPhotoStore(freshName()), openPhotoStore(freshName())];
  await own.keep(photo('a'), 1);
  expect(await demo.notes()).toEqual([]);
});

test('a photo is asked for with strict durability', async () => {
  const store = openPhotoStore(freshName());
  await store.notes();
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  await store.keep(photo('a'), 1);
  expect(begun.mock.calls.map(([, mode, options]) => [mode, options])).toEqual([
    ['readwrite', { durability: 'strict' }],
  ]);
  begun.mockRestore();
});
