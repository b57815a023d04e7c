import { describe, expect, test } from 'vitest';
import { traysAtStage } from '../../../src/domain/rollup/waiting.ts';
import { meanArrival } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, type TestShop, tablets } from '../../support/a-shop.ts';
import { type StageName, stage } from '../../support/workshop.ts';

const minute = 60_000;
/** Three days in minutes. */
const threeDays = 3 * 24 * 60;

/** Minutes that the pieces of the only tray at a stage have stood there, on average. */
function ageAt({ shop, clock }: TestShop, name: StageName): number {
  const [at] = traysAtStage(shop, stage[name]);
  return Math.round((clock() - (at?.since ?? 0)) / minute);
}

/** A tray of which one piece too many was glued and turned: one is missing at the gluing. */
function oneMissing() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 8);
  shop.pass(tray, 'glue', { shown: 1 });
  return { shop, tray };
}

describe('after a count below zero was put right, pieces that come are as old as they are', () => {
  test('by a recount', () => {
    const { shop, tray } = oneMissing();
    shop.later(threeDays);
    shop.recount(tray, 'glue', { counted: 0 });
    shop.pass(tray, 'bore');
    shop.later(10);
    expect(ageAt(shop, 'glue')).toBe(11);
  });

  test('by a recount that found pieces, which count from the recount on', () => {
    const { shop, tray } = oneMissing();
    shop.later(threeDays);
    shop.recount(tray, 'glue', { counted: 2, why: 'found' });
    shop.later(10);
    expect(ageAt(shop, 'glue')).toBe(11);
  });

  test('by a recount after the tray was joined with another', () => {
    const { shop, tray } = oneMissing();
    shop.later(threeDays);
    const other = shop.tray('ash-copper', 1);
    shop.join(tray, other);
    shop.later(threeDays);
    shop.recount(other, 'glue', { counted: 0 });
    shop.pass(other, 'bore');
    shop.later(10);
    expect(ageAt(shop, 'glue')).toBe(11);
  });
});

describe('a tablet whose battery ran out and whose clock says 1970', () => {
  test('keeps every tap of the others readable, though its pieces came before they were taken', () => {
    const [lathe, bench] = tablets('A', 'C');
    const old = aWorkshop({ station: 'old', letter: 'E', now: 60_000 });
    if (!lathe || !bench) throw new Error('two tablets');
    const tray = old.tray('ash-copper', 8);
    lathe.receive(old.log);
    lathe.pass(tray, 'glue', { pieces: 5, shown: 5 });
    old.pass(tray, 'bore', { pieces: 6 });
    lathe.receive(old.log);
    const [pass] = lathe.pass(tray, 'glue');
    expect(pass).toMatchObject({ moves: [{ pieces: 1, since: 0 }] });
  });
});

describe('the mean arrival', () => {
  const place = { at: 'finished', grade: 'first' } as const;

  test.each([
    { pieces: 2, arrived: 30, mean: 15_000, says: 'of two pieces lies between theirs' },
    { pieces: 3, arrived: 10, mean: 3000, says: 'is to the second' },
    { pieces: -2, arrived: -30, mean: 15_000, says: 'of a count below zero is when its pieces were taken' },
    { pieces: 1, arrived: -30, mean: 0, says: 'is never before 1970: no event could hold that' },
    { pieces: 0, arrived: 7, mean: null, says: 'of no piece is not known' },
  ])('$says', ({ pieces, arrived, mean }) => {
    expect(meanArrival({ place, pieces, arrived })).toBe(mean);
  });
});
