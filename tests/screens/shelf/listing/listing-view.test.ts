import { describe, expect, test } from 'vitest';
import type { PhotoHash } from '../../../../src/domain/log/photo-facts.ts';
import { shotsOfVariant } from '../../../../src/domain/rollup/photos.ts';
import {
  chosenLines,
  linesToList,
  listingPhotos,
  mostPhotos,
  rowsToList,
} from '../../../../src/screens/shelf/listing/listing-view.ts';
import { aPhoto } from '../../../support/a-photo.ts';
import { aFullShelf } from '../../../support/full-shelf.ts';
import { variant } from '../../../support/workshop.ts';

const ash = variant['ash-copper'];
const key = `${ash}|first`;

describe('what is to be listed', () => {
  test('is all that stands on the shelf, until something else is said', () => {
    const { shop } = aFullShelf();
    expect(chosenLines(linesToList(rowsToList(shop), new Map()))).toEqual([
      { variant: ash, grade: 'first', from: 'shelf', pieces: 10, shown: 0, price: null },
    ]);
  });

  test('may be fewer, or nothing of a kind', () => {
    const { shop } = aFullShelf();
    const lines = (chosen: boolean, typed: string) =>
      chosenLines(linesToList(rowsToList(shop), new Map([[key, { chosen, typed }]])));
    expect(lines(true, '4')?.map(({ pieces }) => pieces)).toEqual([4]);
    expect(lines(false, '4')).toEqual([]);
    expect(lines(false, 'nonsense')).toEqual([]);
  });

  test.each(['0', '11', '', 'many'])(
    'is nothing at all while %j is typed for a kind that is chosen',
    (typed) => {
      const { shop } = aFullShelf();
      expect(
        chosenLines(linesToList(rowsToList(shop), new Map([[key, { chosen: true, typed }]]))),
      ).toBeUndefined();
    },
  );

  test('is listed once: the same tap judged twice finds nothing the second time', () => {
    const shop = aFullShelf();
    const lines = chosenLines(linesToList(rowsToList(shop.shop), new Map())) ?? [];
    shop.act({ kind: 'move-on-shelf', to: 'listed', lines });
    expect(shop.refusal({ kind: 'move-on-shelf', to: 'listed', lines })).toEqual({
      kind: 'nothing-on-shelf',
    });
    expect(rowsToList(shop.shop)).toEqual([]);
  });
});

describe('the photos that go with a listing sheet', () => {
  function photographed(...digits: readonly string[]) {
    const shop = aFullShelf();
    for (const digit of digits)
      shop.act({ kind: 'photograph', shows: { kind: 'variant', variant: ash }, photo: aPhoto(digit) });
    return new Map([[ash, shotsOfVariant(shop.log, { variant: ash, voids: shop.shop.voids })]]);
  }
  const lines = [
    { variant: ash, grade: 'first', pieces: 4 },
    { variant: ash, grade: 'second', pieces: 1 },
    { variant: variant['plum-copper'], grade: 'first', pieces: 2 },
  ] as const;
  const sheet = (shots: ReturnType<typeof photographed>, held: Iterable<PhotoHash>) =>
    listingPhotos(lines, { shots, held: new Set(held), nameOf: (id) => id });

  test('are those that this tablet has, each once; the others are told, and variants that have none', () => {
    const shots = photographed('a', 'b', 'c', 'b');
    const found = sheet(shots, [aPhoto('a').hash, aPhoto('b').hash, aPhoto('f').hash]);
    expect(found.files).toEqual([
      { variant: ash, photo: aPhoto('b').hash, name: 'ash-copper-1.jpg' },
      { variant: ash, photo: aPhoto('a').hash, name: 'ash-copper-2.jpg' },
    ]);
    expect(found.missing).toEqual([{ variant: ash, photos: 1 }]);
    expect(found.without).toEqual([variant['plum-copper']]);
    expect(found.more).toBe(false);
  });

  test('are a dozen of a variant at most, and it is said when there are more', () => {
    const digits = [...'0123456789abcd'];
    const found = sheet(
      photographed(...digits),
      digits.map((digit) => aPhoto(digit).hash),
    );
    expect(found.files).toHaveLength(mostPhotos);
    expect(found.more).toBe(true);
    expect(found.missing).toEqual([]);
  });
});
