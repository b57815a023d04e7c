import fc from 'fast-check';
import { expect, test } from 'vitest';
import { differingSums } from '../../../src/domain/shop/differing-sums.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { foreignLog } from '../../support/drafts.ts';

const log = foreignLog();

test('two shops of the same events do not differ, whatever the order of the events', () => {
  fc.assert(
    fc.property(fc.shuffledSubarray([...log], { minLength: log.length }), (order) => {
      expect(differingSums(shopOf(order), shopOf(log))).toEqual([]);
    }),
  );
});

test('a shop that lacks any one event differs, and one figure more is found by its name', () => {
  for (const left of log) {
    const others = log.filter((event) => event !== left);
    expect(differingSums(shopOf(others), shopOf(log))).toContain('seen');
  }
  const shop = shopOf(log);
  for (const key of shop.ledger.made.keys()) shop.ledger.made.set(key, 99);
  expect(differingSums(shop, shopOf(log))).toEqual(['ledger']);
});
