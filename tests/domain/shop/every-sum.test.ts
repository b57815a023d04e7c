import { expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { emptyShop, shopOf } from '../../../src/domain/shop/shop.ts';

const demo = shopOf(demoShop({ now: Date.UTC(2026, 2, 16, 12) }));

test.each(Object.entries(emptyShop()))('the log of a shop is added to its %s', (name, empty) => {
  expect(new Map(Object.entries(demo)).get(name)).not.toEqual(empty);
});
