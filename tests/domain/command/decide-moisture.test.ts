import fc from 'fast-check';
import { beforeEach, describe, expect, test } from 'vitest';
import { latestAir, readingsOf } from '../../../src/domain/rollup/lot-moisture.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { isVoided } from '../../../src/domain/shop/voids.ts';
import { aWorkshop, isVoidable } from '../../support/a-shop.ts';
import { lot, species } from '../../support/workshop.ts';

const air = { celsius: 205, humidity: 480 };
let shop: ReturnType<typeof aWorkshop>;

beforeEach(() => {
  shop = aWorkshop();
  for (const id of [lot.shelf, lot.stove])
    shop.set({ register: 'lot', id, value: { name: `Ash, ${id}`, species: species.ash, retired: false } });
});

const read = (of: keyof typeof lot, percent: number, of_air: typeof air | null = null) =>
  shop.act({ kind: 'read-moisture', lot: lot[of], percent, air: of_air });
const percents = (of: keyof typeof lot, log = shop.log) =>
  readingsOf(log, { lot: lot[of], voids: shopOf(log).voids }).map(({ percent }) => percent);

describe('a reading of a lot', () => {
  test('keeps its wood, and the air where that was read', () => {
    const [event] = read('shelf', 124, air);
    expect(event).toMatchObject({ kind: 'moisture-read', lot: 'shelf', species: 'ash', percent: 124, air });
    const [bare] = read('shelf', 121);
    expect(bare).not.toHaveProperty('air');
    const [first, second] = readingsOf(shop.log, { lot: lot.shelf, voids: shop.shop.voids });
    expect(first).toMatchObject({ percent: 12.4, air: { celsius: 20.5, humidity: 48 } });
    expect(second).toMatchObject({ percent: 12.1, air: null });
  });

  test.each([
    [{ lot: lot.shelf, percent: -1, air: null }, 'number'],
    [{ lot: lot.shelf, percent: 2001, air: null }, 'number'],
    [{ lot: lot.shelf, percent: 12.4, air: null }, 'number'],
    [{ lot: lot.shelf, percent: Number.NaN, air: null }, 'number'],
    [{ lot: lot.shelf, percent: 124, air: { celsius: 1501, humidity: 480 } }, 'number'],
    [{ lot: lot.shelf, percent: 124, air: { celsius: 200, humidity: 1001 } }, 'number'],
    [{ lot: 'nowhere' as typeof lot.shelf, percent: 124, air: null }, 'no-lot'],
  ] as const)('%j is refused', (asked, kind) => {
    expect(shop.judge({ kind: 'read-moisture', ...asked })).toMatchObject({
      kind: 'refused',
      problem: { kind },
    });
  });

  test('is taken back, and its taking back is', () => {
    read('shelf', 130);
    const slip = read('shelf', 13).find(isVoidable);
    if (!slip) throw new Error('nothing to take back');
    const undo = shop.act({ kind: 'undo', events: [slip] }).find(isVoidable);
    expect(percents('shelf')).toEqual([13]);
    if (!undo) throw new Error('nothing to put back');
    shop.act({ kind: 'undo', events: [undo] });
    expect(percents('shelf')).toEqual([13, 1.3]);
  });

  test('belongs to its lot alone, whatever the order in which readings and voids come', () => {
    read('stove', 80, air);
    const slip = read('shelf', 13).find(isVoidable);
    if (slip) shop.act({ kind: 'undo', events: [slip] });
    read('shelf', 124);
    fc.assert(
      fc.property(fc.shuffledSubarray([...shop.log], { minLength: shop.log.length }), (log) => {
        expect(percents('shelf', log)).toEqual([12.4]);
        expect(percents('stove', log)).toEqual([8]);
        expect(slip && isVoided(shopOf(log).voids, slip)).toBe(true);
      }),
    );
  });
});

test('the air of the room is that of the latest reading that has one', () => {
  const of = (name: keyof typeof lot) => readingsOf(shop.log, { lot: lot[name], voids: shop.shop.voids });
  expect(latestAir([of('shelf'), of('stove')])).toBeNull();
  read('stove', 80, { celsius: 180, humidity: 500 });
  read('shelf', 124, air);
  read('stove', 79);
  expect(latestAir([of('shelf'), of('stove')])).toEqual({ celsius: 20.5, humidity: 48 });
});
