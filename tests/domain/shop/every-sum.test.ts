import { expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { emptyShop, shopOf } from '../../../src/domain/shop/shop.ts';
import { sampleLog } from '../log/sample-events.ts';

// Nobody has a camera in the demo: its photos come from a log in which everything comes up.
const all = shopOf([...demoShop({ now: Date.UTC(2026, 2, 16, 12) }), ...sampleLog()]);

test.each(Object.entries(emptyShop()))('the log of a shop is added to its %s', (name, empty) => {
  expect(new Map(Object.entries(all)).get(name)).not.toEqual(empty);
});
