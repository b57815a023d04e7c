import { expect, test } from 'vitest';
import { unpictured } from '../../../src/domain/rollup/unpictured.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { aPhoto } from '../../support/a-photo.ts';
import type { TestShop } from '../../support/a-shop.ts';
import { aFullShelf } from '../../support/full-shelf.ts';
import { variant } from '../../support/workshop.ts';

const list = ({ shop }: TestShop) => unpictured(shop).map((each) => [each.variant, each.finished]);

function putAway(shop: TestShop, id: (typeof variant)['ash-copper']): void {
  const value = factOf(shop.shop.registers, { register: 'variant', id });
  if (value) shop.set({ register: 'variant', id, value: { ...value, retired: true } });
}

test('variants without a photo are told, those with finished pieces first, then by name', () => {
  const shop = aFullShelf();
  expect(list(shop)).toEqual([
    [variant['ash-copper'], 10],
    [variant['ash-nickel'], 0],
    [variant['plum-copper'], 0],
  ]);
});

test('one that is put away is told only while pieces of it are finished', () => {
  const shop = aFullShelf();
  putAway(shop, variant['ash-copper']);
  putAway(shop, variant['plum-copper']);
  expect(list(shop)).toEqual([
    [variant['ash-copper'], 10],
    [variant['ash-nickel'], 0],
  ]);
});

test('a photo of it takes it off; when the photo is taken back it comes again', () => {
  const shop = aFullShelf();
  const shows = { kind: 'variant', variant: variant['ash-copper'] } as const;
  const taken = shop.act({ kind: 'photograph', shows, photo: aPhoto('a') });
  expect(list(shop).map(([id]) => id)).not.toContain(variant['ash-copper']);
  shop.undo(taken);
  expect(list(shop)[0]).toEqual([variant['ash-copper'], 10]);
});
