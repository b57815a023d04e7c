import * as v from 'valibot';
import { expect, test } from 'vitest';
import { photoFiles } from '../../../src/domain/export/photo-files.ts';
import { variantId } from '../../../src/domain/log/ids.ts';
import { photoHash } from '../../../src/domain/log/photo-facts.ts';

const hash = (digit: string) => v.parse(photoHash, digit.repeat(64));
const of = (id: string, name: string, digits: string) => ({
  variant: v.parse(variantId, id),
  name,
  photos: [...digits].map(hash),
});
const names = (...variants: ReturnType<typeof of>[]) => photoFiles(variants).map(({ name }) => name);

test('photos are named by their variant in plain letters and a number', () => {
  expect(names(of('a', 'Awl haft, Örück’s plum', 'ab'), of('b', 'Ahle 7/8"', 'c'))).toEqual([
    'awl-haft-oruck-s-plum-1.jpg',
    'awl-haft-oruck-s-plum-2.jpg',
    'ahle-7-8-1.jpg',
  ]);
});

test('no two files have the same name, whatever the variants are called', () => {
  const all = names(
    of('a', 'Haft', 'ab'),
    of('b', 'HAFT!', 'cd'),
    of('c', 'haft-1', 'e'),
    of('d', '柄', 'f'),
    of('e', 'ручка', '0'),
  );
  expect(all).toEqual([
    'haft-1.jpg',
    'haft-2.jpg',
    'haft-3.jpg',
    'haft-4.jpg',
    'haft-1-1.jpg',
    'piece-1.jpg',
    'piece-2.jpg',
  ]);
  expect(new Set(all).size).toBe(all.length);
});

test('a photo that was taken down twice is one file', () => {
  expect(names(of('a', 'Haft', 'aba'))).toEqual(['haft-1.jpg', 'haft-2.jpg']);
});
