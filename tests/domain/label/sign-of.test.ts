import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopSignSchema } from '../../../src/domain/label/shop-sign.ts';
import { signOf } from '../../../src/domain/label/sign-of.ts';
import type { RegisterSet } from '../../../src/domain/set-up/register.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { emptyShop } from '../../../src/domain/shop/shop.ts';
import { aShop, type TestShop, tablets } from '../../support/a-shop.ts';

const shopFact = (name: string, more: object = {}) =>
  ({
    register: 'shop',
    id: 'shop',
    value: { name, zone: 'Europe/London', dayStartHour: 4, ...more },
  }) as RegisterSet;

const written = ({ shop }: TestShop) => factOf(shop.registers, { register: 'shop', id: 'shop' })?.sign;

/** A tablet with a word on the shop as a version before signs wrote it. */
function olderShop(station = 'older'): TestShop {
  const shop = aShop({ station });
  const decision = shop.judge({ kind: 'set', set: shopFact('Old') });
  const [draft] = decision.kind === 'events' ? decision.drafts : [];
  if (draft?.kind !== 'set-up') throw new Error('no word on the shop');
  shop.record([{ ...draft, set: shopFact('Old') }]);
  return shop;
}

describe("the shop's sign", () => {
  test('there is none before there is a shop', () => {
    expect(signOf(emptyShop().registers)).toBeUndefined();
  });

  test('is drawn when the shop is set up, by chance that comes in', () => {
    const signs = ['one', 'two', 'three'].map((station) => {
      const shop = aShop({ station });
      shop.set(shopFact('Here'));
      expect(v.is(shopSignSchema, written(shop))).toBe(true);
      expect(signOf(shop.shop.registers)).toBe(written(shop));
      return written(shop);
    });
    expect(new Set(signs).size).toBe(3);
  });

  test('stays when name and zone are edited, and whatever the edit says of it', () => {
    const shop = aShop();
    shop.set(shopFact('Here'));
    const sign = written(shop);
    shop.set(shopFact('There', { zone: 'Europe/Vienna' }));
    expect(written(shop)).toBe(sign);
    shop.set(shopFact('Elsewhere', { sign: sign === 'AAAA' ? 'CCCC' : 'AAAA' }));
    expect(written(shop)).toBe(sign);
  });

  test('is the same on every tablet, edited here or there', () => {
    const [first, second] = tablets('A', 'C');
    if (!first || !second) throw new Error('two tablets');
    const sign = written(first);
    second.set(shopFact('Renamed there'));
    first.set(shopFact('Renamed here'));
    first.receive(second.log);
    second.receive(first.log);
    expect(sign).toBeDefined();
    expect([written(first), written(second)]).toEqual([sign, sign]);
  });

  test('of an older log follows from its word on the shop, and is written down with the next', () => {
    const old = olderShop();
    expect(written(old)).toBeUndefined();
    const derived = signOf(old.shop.registers);
    expect(v.is(shopSignSchema, derived)).toBe(true);
    expect(signOf(olderShop('another').shop.registers)).not.toBe(derived);
    old.set(shopFact('Renamed'));
    expect(written(old)).toBe(derived);
  });

  test('of an older log comes out the same where tablets edit it apart', () => {
    const old = olderShop();
    const [here, there] = [aShop({ station: 'here' }), aShop({ station: 'there' })];
    for (const tablet of [here, there]) {
      tablet.receive(old.log);
      tablet.set(shopFact(`From ${tablet.station}`));
    }
    expect(written(here)).toBe(written(there));
  });
});
