import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countOf } from '../../../src/domain/shop/counter.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { flawHeat } from '../../../src/domain/study/flaw-heat.ts';
import { aWorkshop, mended, scrapped } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { studied } from '../../support/study-makers.ts';

/** Three trays of ash at the boring: 1 of 4, 3 of 4, 0 of 2 and, tapped last, 1 of 2 flawed. */
function fourTrays() {
  const shop = aWorkshop();
  const trays = ([4, 4, 2, 2] as const).map((pieces) => shop.tray('ash-copper', pieces));
  const [one, two, three, four] = trays as [
    (typeof trays)[0],
    (typeof trays)[0],
    (typeof trays)[0],
    (typeof trays)[0],
  ];
  shop.flaw(one, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(one, 'bore', { pieces: 3 });
  shop.flaw(two, 'bore', { why: 'blown', outcome: mended, pieces: 2 });
  shop.flaw(two, 'bore', { why: 'catch', outcome: scrapped() });
  shop.pass(two, 'bore');
  shop.pass(three, 'bore', { pieces: 2 });
  const last = shop.clock();
  shop.flaw(four, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(four, 'bore');
  return { table: studied(shop.log), trays: { one, two, four }, last };
}

describe('a cell of the heat table', () => {
  test('has the share that was flawed and the trays behind it, the worst first and the later of two before', () => {
    const { table, trays, last } = fourTrays();
    const [cell, ...others] = flawHeat(table);
    expect(others).toEqual([]);
    expect(cell).toMatchObject({
      ...{
        stage: 'bore',
        species: 'ash',
        judged: 12,
        flawed: 5,
        scrapped: 3,
        share: 5 / 12,
        furtherTrays: 0,
      },
    });
    expect(cell?.trays.map(({ tray, flawed, judged }) => [tray, flawed, judged])).toEqual([
      [trays.two, 3, 4],
      [trays.four, 1, 2],
      [trays.one, 1, 4],
    ]);
    expect(cell?.trays[1]?.last).toBe(last);
  });

  test('names no more trays than are asked for, and says how many there are besides', () => {
    const [cell] = flawHeat(fourTrays().table, { most: 1 });
    expect([cell?.trays.length, cell?.furtherTrays]).toEqual([1, 2]);
  });

  test('has the pieces that the shop has counted', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const { visits, flaws } = shopOf(log);
        for (const { stage, species, judged, flawed, scrapped: lost, trays } of flawHeat(studied(log))) {
          const key = `${stage}|${species}` as const;
          expect(judged).toBe(countOf(visits.first, key) + countOf(visits.repeat, key));
          const of = [...flaws.byOutcome].filter(([name]) => name.startsWith(`${key}|`));
          expect(flawed).toBe(of.reduce((sum, [, by]) => sum + by, 0));
          expect(lost).toBe(countOf(flaws.byOutcome, `${key}|scrapped`));
          expect(trays.reduce((sum, tray) => sum + tray.flawed, 0)).toBe(flawed);
        }
      }),
      { numRuns: 40 },
    );
  });
});
