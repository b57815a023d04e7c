import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { known, notKnown } from '../../../../src/domain/plan/cost/amount.ts';
import { type Loss, lossTable } from '../../../../src/domain/plan/cost/loss-table.ts';
import {
  lossOfReturn,
  lossOfScrap,
  lossOfSecond,
  type Making,
} from '../../../../src/domain/plan/cost/losses.ts';
import { parts, reasons, stages } from './makers.ts';

const { turn, sand, wax } = stages;
const { core, ferrule, oil } = parts;
const { tearOut, slip } = reasons;

const making: Making = {
  route: [turn, sand, wax],
  bill: [
    { part: core, each: 1, stage: turn },
    { part: ferrule, each: 2, stage: sand },
  ],
  minutesAt: (stage) => ({ [turn]: 10, [sand]: 6 })[stage],
  unitCost: (part) => (part === oil ? null : part === core ? 400 : 50),
  hourlyRate: 3000,
};

describe('what a piece had cost (by hand: 50 a minute)', () => {
  test('at the first stage it is its work: no part is fitted yet', () => {
    expect(lossOfScrap(making, { stage: turn, saved: [] })).toEqual(known(500));
  });

  test('later it is the work so far and the parts that were fitted, less those that are saved', () => {
    expect(lossOfScrap(making, { stage: sand, saved: [] })).toEqual(known(1200));
    expect(lossOfScrap(making, { stage: sand, saved: [core] })).toEqual(known(800));
  });

  test('a stage without a known time leaves it open', () => {
    expect(lossOfScrap(making, { stage: wax, saved: [] })).toEqual(notKnown({ what: 'minutes', stage: wax }));
  });

  test('a piece that was sent back costs the work over again', () => {
    expect(lossOfReturn(making, { stage: sand, to: turn })).toEqual(known(800));
  });

  test('a second costs what it brings in less', () => {
    expect(lossOfSecond({ firstPrice: 4000, secondPrice: 2500 })).toEqual(known(1500));
    expect(lossOfSecond({ firstPrice: null, secondPrice: 2500 })).toEqual(
      notKnown({ what: 'price', grade: 'first' }),
    );
  });
});

describe('the table', () => {
  test('halves what a piece with two reasons lost, and keeps what is not known apart', () => {
    const table = lossTable([
      { stage: turn, reasons: [tearOut, slip], pieces: 3, each: known(101) },
      { stage: sand, reasons: [slip], pieces: 1, each: known(90) },
      { stage: sand, reasons: [], pieces: 2, each: known(10) },
      { stage: wax, reasons: [slip], pieces: 4, each: notKnown({ what: 'hourly-rate' }) },
    ]);
    expect(table.cells).toEqual([
      { stage: turn, reason: tearOut, pieces: 3, money: 152 },
      { stage: turn, reason: slip, pieces: 3, money: 151 },
      { stage: sand, reason: slip, pieces: 1, money: 90 },
      { stage: sand, reason: null, pieces: 2, money: 20 },
    ]);
    expect([...table.byStage]).toEqual([
      [turn, 303],
      [sand, 110],
    ]);
    expect([...table.byReason]).toEqual([
      [slip, 241],
      [tearOut, 152],
      [null, 20],
    ]);
    expect(table.whole).toBe(413);
    expect(table.unknown).toEqual({ pieces: 4, missing: [{ what: 'hourly-rate' }] });
  });

  test('rows, columns and cells add up to the whole', () => {
    const loss: fc.Arbitrary<Loss> = fc.record({
      stage: fc.constantFrom(turn, sand, wax),
      reasons: fc.subarray([tearOut, slip]),
      pieces: fc.integer({ min: 0, max: 40 }),
      each: fc.double({ min: 0, max: 9000, noNaN: true }).map(known),
    });
    fc.assert(
      fc.property(fc.array(loss, { maxLength: 20 }), (losses) => {
        const { cells, byStage, byReason, whole } = lossTable(losses);
        const sum = (values: Iterable<number>) => [...values].reduce((so, value) => so + value, 0);
        expect(sum(cells.map(({ money }) => money))).toBe(whole);
        expect(sum(byStage.values())).toBe(whole);
        expect(sum(byReason.values())).toBe(whole);
        const exact = losses.reduce(
          (so, { pieces, each }) => so + (each.kind === 'known' ? pieces * each.money : 0),
          0,
        );
        expect(Math.abs(exact - whole)).toBeLessThan(0.5 + 1e-6);
      }),
    );
  });
});
