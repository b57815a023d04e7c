import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { tapCounts } from '../../../src/domain/study/tap-counts.ts';
import { type TapFilter, tapFilter } from '../../../src/domain/study/tap-filter.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { studied, tapsIn } from '../../support/study-makers.ts';
import { batch, person, species, stage } from '../../support/workshop.ts';

/** Two days, two persons and nobody, two woods, two batches. */
function busyShop() {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 9);
  const plum = shop.tray('plum-copper', 9, 'autumn');
  shop.pass(ash, 'bore', { pieces: 1 });
  shop.by('edda');
  shop.pass(ash, 'bore', { pieces: 2 });
  shop.pass(plum, 'turn', { pieces: 3 });
  shop.later(24 * 60);
  const nextDay = shop.clock();
  shop.by('odo');
  shop.pass(plum, 'turn', { pieces: 4 });
  shop.act({ kind: 'end-spell', stage: stage.turn });
  shop.by(null);
  shop.pass(ash, 'bore', { pieces: 5 });
  return { table: studied(shop.log), nextDay };
}

const day = (text: string) => text as ShopDay;

test.each<[string, (nextDay: number) => TapFilter, readonly number[]]>([
  ['nothing', () => ({}), [1, 2, 3, 4, 0, 5]],
  ['a first day', () => ({ from: day('2026-03-03') }), [4, 0, 5]],
  ['a last day', () => ({ to: day('2026-03-02') }), [1, 2, 3]],
  ['a day', () => ({ from: day('2026-03-03'), to: day('2026-03-03') }), [4, 0, 5]],
  ['a person', () => ({ person: person.edda }), [2, 3]],
  ['nobody', () => ({ person: null }), [1, 5]],
  ['a batch', () => ({ batch: batch.autumn }), [3, 4]],
  ['a wood', () => ({ species: species.ash }), [1, 2, 5]],
  ['a stage', () => ({ stage: stage.turn }), [3, 4, 0]],
  ['what was before a moment', (before) => ({ before }), [1, 2, 3]],
  ['what was since', (since) => ({ since }), [4, 0, 5]],
  ['several at once', (since) => ({ since, batch: batch.spring, person: null }), [5]],
])('a filter by %s', (_, filterAt, wanted) => {
  const { table, nextDay } = busyShop();
  const isWanted = tapFilter(table, filterAt(nextDay));
  const found = tapsIn(table).filter((_tap, row) => isWanted(row));
  expect(found.map(({ what }) => what.pieces)).toEqual(wanted);
});

test('what a filter lets through and what its opposite does are all, each once', () => {
  fc.assert(
    fc.property(histories, fc.nat(50), (steps, minutes) => {
      const table = studied(play(steps).log);
      const at = (table.columns.wall[0] ?? 0) + minutes * 60_000;
      const pairs: readonly (readonly [TapFilter, TapFilter])[] = [
        [{ before: at }, { since: at }],
        [{ to: day('2026-03-02') }, { from: day('2026-03-03') }],
      ];
      for (const [one, other] of pairs) {
        const counts = [tapCounts(table, one), tapCounts(table, other)].flat();
        const taps = counts.reduce((sum, count) => sum + count.taps, 0);
        expect(taps).toBe(table.length);
        const [isOne, isOther] = [tapFilter(table, one), tapFilter(table, other)];
        for (let row = 0; row < table.length; row += 1) expect(isOne(row)).toBe(!isOther(row));
      }
    }),
    { numRuns: 40 },
  );
});

test('taps are counted by what they say of which wood, variant and batch', () => {
  fc.assert(
    fc.property(histories, (steps) => {
      const table = studied(play(steps).log);
      const wanted = new Map<string, number>();
      for (const { what, of } of tapsIn(table)) {
        const key = JSON.stringify([what, of && [of.species, of.variant, of.batch]]);
        wanted.set(key, (wanted.get(key) ?? 0) + 1);
      }
      const found = tapCounts(table).map(({ what, of, taps }) => [
        JSON.stringify([what, of && [of.species, of.variant, of.batch]]),
        taps,
      ]);
      expect(new Map(found as [string, number][])).toEqual(wanted);
    }),
    { numRuns: 30 },
  );
});
