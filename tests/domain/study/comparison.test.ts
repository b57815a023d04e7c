import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { twoProportions } from '../../../src/domain/statistics/two-proportions.ts';
import { type ComparedCell, compare } from '../../../src/domain/study/comparison.ts';
import { survivalBySpecies } from '../../../src/domain/study/survival.ts';
import { aWorkshop, backTo, lowered, scrapped } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { studied, testRoutes } from '../../support/study-makers.ts';
import { person } from '../../support/workshop.ts';

const named = (cells: readonly ComparedCell[]) =>
  new Map(cells.map((cell) => [`${cell.stage ?? 'all'} ${cell.species ?? 'all'}`, cell]));
const counts = (cell: ComparedCell | undefined, name: 'clean' | 'kept' | 'firsts') =>
  cell && [cell[name].a.k, cell[name].a.n, cell[name].b.k, cell[name].b.n];

/**
 * Edda at the boring of ash: 6 pass, 2 are scrapped. Odo: 3 pass, 1 is lowered. Edda sends one of her ash back from the
 * glue; Odo bores one of plum.
 */
function twoPersons() {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 12);
  const plum = shop.tray('plum-copper', 1);
  shop.by('edda');
  shop.pass(ash, 'bore', { pieces: 6 });
  shop.flaw(ash, 'bore', { why: 'blown', outcome: scrapped(), pieces: 2 });
  shop.by('odo');
  shop.pass(ash, 'bore', { pieces: 3 });
  shop.flaw(ash, 'bore', { why: 'scratch', outcome: lowered });
  shop.pass(plum, 'bore');
  shop.by('edda');
  shop.flaw(ash, 'glue', { why: 'gap', outcome: backTo('bore') });
  return studied(shop.log);
}

describe('a comparison of two persons', () => {
  const byPerson = { a: { person: person.edda }, b: { person: person.odo } };

  test('has the pieces of both everywhere, and those that are decided on', () => {
    const cells = named(compare(twoPersons(), byPerson));
    expect([...cells.keys()]).toEqual([
      ...['all all', 'bore all', 'glue all', 'all ash', 'all plum'],
      ...['bore ash', 'bore plum', 'glue ash'],
    ]);
    expect(counts(cells.get('bore ash'), 'clean')).toEqual([6, 8, 3, 4]);
    expect(counts(cells.get('bore ash'), 'kept')).toEqual([6, 8, 4, 4]);
    expect(counts(cells.get('bore ash'), 'firsts')).toEqual([6, 8, 3, 4]);
    expect(counts(cells.get('bore plum'), 'clean')).toEqual([0, 0, 1, 1]);
    expect(counts(cells.get('glue ash'), 'clean')).toEqual([0, 1, 0, 0]);
    expect(counts(cells.get('bore all'), 'clean')).toEqual([6, 8, 4, 5]);
    expect(counts(cells.get('all ash'), 'clean')).toEqual([6, 9, 3, 4]);
    expect(counts(cells.get('all all'), 'clean')).toEqual([6, 9, 4, 5]);
  });

  test('gives the difference with the interval asked for, and none while one of them has no piece', () => {
    const cells = named(compare(twoPersons(), { ...byPerson, level: 0.8 }));
    const wanted = twoProportions({ k: 6, n: 8 }, { k: 3, n: 4 }, 0.8);
    expect(cells.get('bore ash')?.clean.of).toEqual(wanted);
    expect(cells.get('bore plum')?.clean.of.difference).toBeUndefined();
    expect(cells.get('bore plum')?.clean.of.interval).toEqual([-1, 1]);
    const usual = named(compare(twoPersons(), byPerson)).get('bore ash')?.clean.of.interval;
    expect(usual).toEqual(twoProportions({ k: 6, n: 8 }, { k: 3, n: 4 }, 0.9).interval);
  });
});

test('both sides of a moment together are what the survival of all has', () => {
  fc.assert(
    fc.property(histories, fc.nat(40), (steps, minutes) => {
      const table = studied(play(steps).log);
      const at = (table.columns.wall[0] ?? 0) + minutes * 60_000;
      const cells = compare(table, { a: { before: at }, b: { since: at } });
      for (const { group, stages } of survivalBySpecies(table, { routes: testRoutes }))
        for (const { stage, finished, firsts, firstPass } of stages) {
          const cell = cells.find((each) => each.stage === stage && each.species === group);
          const both = (name: 'clean' | 'kept' | 'firsts') => [
            (cell?.[name].a.k ?? 0) + (cell?.[name].b.k ?? 0),
            (cell?.[name].a.n ?? 0) + (cell?.[name].b.n ?? 0),
          ];
          expect(both('clean')).toEqual([firstPass.out, firstPass.of]);
          expect(both('kept')).toEqual([finished.atRisk - finished.lost, finished.atRisk]);
          expect(both('firsts')).toEqual([firsts.atRisk - firsts.lost, firsts.atRisk]);
        }
    }),
    { numRuns: 30 },
  );
});

test('nothing compared with nothing has no cell', () => {
  expect(compare(studied([]), { a: {}, b: {} })).toEqual([]);
});
