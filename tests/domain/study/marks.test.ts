import * as v from 'valibot';
import { expect, test } from 'vitest';
import { markId } from '../../../src/domain/log/ids.ts';
import type { MarkFact } from '../../../src/domain/set-up/facts.ts';
import { answeredIn, marksOf } from '../../../src/domain/study/marks.ts';
import { signalSeries } from '../../../src/domain/study/signal-series.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { reason, species, stage } from '../../support/workshop.ts';

const plain: MarkFact = {
  ...{ note: 'Ground', stage: stage.turn, species: null, at: 0, answers: null, retired: false },
};

/** The registers of a shop in which these marks are noted, named `m-0`, `m-1` and so on. */
function noted(...marks: readonly Partial<MarkFact>[]) {
  const shop = aWorkshop();
  for (const [at, mark] of marks.entries())
    shop.set({ register: 'mark', id: v.parse(markId, `m-${at}`), value: { ...plain, ...mark } });
  return shop.shop.registers;
}

const scrap = { kind: 'scrap' } as const;
const tearOut = { kind: 'reason', reason: reason['tear-out'] } as const;

test('the latest answer to a series counts, in whatever order they were noted; one that was taken away does not', () => {
  const of = (since: number, more: Partial<MarkFact> = {}) => ({ answers: { of: tearOut, since }, ...more });
  const registers = noted(
    of(3),
    of(5),
    of(4),
    of(9, { retired: true }),
    of(2, { species: species.ash }),
    of(1, { stage: stage.bore }),
    { answers: { of: scrap, since: 0 } },
    {},
  );
  expect(answeredIn(registers)).toEqual([
    { stage: 'bore', species: null, of: tearOut, since: 1 },
    { stage: 'turn', species: 'ash', of: tearOut, since: 2 },
    { stage: 'turn', species: null, of: scrap, since: 0 },
    { stage: 'turn', species: null, of: tearOut, since: 5 },
  ]);
});

test('what was before an answer is no news in its series, and in no other', () => {
  const shop = aWorkshop();
  const moments = ['old', 'new'].map(() => {
    const now = shop.clock();
    shop.flaw(shop.tray('ash-copper', 2), 'bore', { why: 'blown', outcome: scrapped() });
    return now;
  });
  const blown = { kind: 'reason', reason: reason.blown } as const;
  const registers = noted({
    ...{ stage: stage.bore, species: species.ash, answers: { of: blown, since: moments[1] ?? 0 } },
  });
  const series = signalSeries(studied(shop.log), { answered: answeredIn(registers) });
  expect(series.map(({ of, trays }) => [of.kind, trays.length])).toEqual([
    ['scrap', 2],
    ['reason', 1],
  ]);
});

test('a mark of all woods stands on every chart of its stage, that of one wood on its own, each at its time', () => {
  const registers = noted(
    { at: 30, note: 'New belt' },
    { at: 10, note: 'Slower in plum', species: species.plum },
    { at: 20, note: 'Ground' },
    { at: 20, note: 'Honed' },
    { at: 15, note: 'Elsewhere', stage: stage.sand },
    { at: 5, note: 'Wrong', retired: true },
  );
  const [belt, slower, ground, honed] = ['m-0', 'm-1', 'm-2', 'm-3'];
  const ids = (wood: MarkFact['species']) =>
    marksOf(registers, { stage: stage.turn, species: wood }).map(({ id }) => id);
  expect(ids(null)).toEqual([ground, honed, belt]);
  expect(ids(species.ash)).toEqual([ground, honed, belt]);
  expect(ids(species.plum)).toEqual([slower, ground, honed, belt]);
  expect(marksOf(registers, { stage: stage.sand, species: null })).toEqual([
    { id: 'm-4', at: 15, note: 'Elsewhere' },
  ]);
});
