import { expect, test } from 'vitest';
import { cases } from '../../../../shared/check-values/flow.json' with { type: 'json' };
import { forecast } from '../../../../src/domain/plan/forecast/forecast-desk.ts';
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { aLot, aPlan, aStep, day, hour, known, minute, takes, workWeeks } from './plans.ts';

const doneAt = (plan: PlanModel) => replicator({ plan, marks: [], seed: 1, replications: 1 })(0, 1).doneAt[0];

test('a tray goes on when all its pieces are done', () => {
  expect(doneAt(aPlan([aStep(0, 2), aStep(1, 3)], { lots: [aLot(5)] }))).toBe(5 * 5 * minute);
  // Two people, two trays: each makes one.
  const two = { people: [{ hours: [{ from: 0, to: day }] }, { hours: [{ from: 0, to: day }] }] };
  expect(doneAt(aPlan([aStep(0, 2), aStep(1, 3)], { lots: [aLot(5), aLot(3)], ...two }))).toBe(25 * minute);
});

test('work rests overnight, at noon and at the weekend, and a cure does not', () => {
  const people = [{ hours: workWeeks(3) }];
  const friday = 4 * day;
  const plan = (minutes: number) =>
    aPlan([aStep(0, minutes)], { people, now: friday + 16 * hour, lots: [aLot(1)] });
  expect(doneAt(plan(60))).toBe(friday + 17 * hour);
  expect(doneAt(plan(61))).toBe(7 * day + 8 * hour + minute);
  expect(doneAt(plan(60 + 300))).toBe(7 * day + 14 * hour);
  const cured = aPlan([aStep(0, 1, { loading: takes(10) })], {
    people,
    now: friday + 16 * hour,
    stages: [{ kind: 'hold', resource: null, cureMinutes: 20 * 60 }],
    lots: [aLot(6)],
  });
  expect(doneAt(cured)).toBe(7 * day + 8 * hour + 6 * minute);
});

test('25 pieces and 8 clamps that hold a day are four rounds (arithmetic: whole rounds)', () => {
  const { inputs, expected } = cases['flow-batch-clamps'];
  const plan = aPlan([aStep(0, 0)], {
    stages: [{ kind: 'hold', resource: 0, cureMinutes: inputs.hours * 60 }],
    resources: [{ name: 'clamps', capacity: inputs.clamps }],
    lots: Array.from({ length: inputs.n }, () => aLot(1)),
  });
  expect(doneAt(plan)).toBe(expected.elapsed_hours * hour);
  expect(doneAt({ ...plan, lots: [aLot(inputs.n)] })).toBe(expected.elapsed_hours * hour);
});

test('two stages that share clamps take them from one another', () => {
  const hold = { kind: 'hold', resource: 0, cureMinutes: 60 } as const;
  const plan = aPlan([aStep(0, 0), aStep(1, 0)], {
    stages: [hold, hold],
    resources: [{ name: 'clamps', capacity: 4 }],
    lots: [aLot(4), aLot(4)],
  });
  expect(doneAt(plan)).toBe(4 * hour);
  expect(doneAt({ ...plan, resources: [{ name: 'clamps', capacity: 8 }] })).toBe(2 * hour);
  expect(doneAt({ ...plan, stages: [hold, { ...hold, resource: null }] })).toBe(3 * hour);
});

test('what is held now is unloaded when it is cured, and its places are taken until then', () => {
  const plan = aPlan([aStep(0, 1)], {
    stages: [{ kind: 'hold', resource: 0, cureMinutes: 60 }],
    resources: [{ name: 'rack', capacity: 5 }],
    lots: [aLot(5, { at: 'held', ready: 30 * minute }), aLot(5)],
  });
  expect(doneAt(plan)).toBe((30 + 5 + 60 + 5) * minute);
});

test('one lathe is used by one at a time', () => {
  const people = Array.from({ length: 3 }, () => ({ hours: [{ from: 0, to: 30 * day }] }));
  const plan = aPlan([aStep(0, 10)], {
    people,
    stages: [{ kind: 'work', resource: 0 }],
    resources: [{ name: 'lathe', capacity: 1 }],
    lots: [aLot(1), aLot(1), aLot(1)],
  });
  expect(doneAt(plan)).toBe(30 * minute);
  expect(doneAt({ ...plan, resources: [{ name: 'lathes', capacity: 2 }] })).toBe(20 * minute);
});

/** Nines and whatever else wait for clamps that hold ten hours, each of a variant of its own; good ones by run, variant and mark. */
function goodInClamps({ clamps, lots }: { readonly clamps: number; readonly lots: readonly number[] }) {
  const runs = 200;
  const plan = aPlan([aStep(0, 0)], {
    stages: [{ kind: 'hold', resource: 0, cureMinutes: 600 }],
    resources: [{ name: 'clamps', capacity: clamps }],
    variants: lots.map(() => ({ wanted: 0, finished: 0, due: null, steps: [aStep(0, 0)] })),
    lots: lots.map((pieces, variant) => aLot(pieces, { variant })),
    takes: 'any',
  });
  const marks = [11 * hour, 21 * hour];
  const { good } = replicator({ plan, marks, seed: 1, replications: runs })(0, runs);
  const at = (run: number, variant: number, mark: number) =>
    good[(run * lots.length + variant) * marks.length + mark] ?? Number.NaN;
  return Array.from({ length: runs }, (_, run) =>
    lots.map((_, variant) => [at(run, variant, 0), at(run, variant, 1)]),
  );
}

test('who has a clamp or two free looks for a tray that fits, whichever comes first', () => {
  // One place is too little to begin on a nine, and enough for the one.
  for (const run of goodInClamps({ clamps: 10, lots: [9, 9, 1] })) {
    expect(run.reduce((sum, [first = 0]) => sum + first, 0)).toBe(10);
    expect(run[2]).toEqual([1, 1]);
  }
});

test('what is left of a torn tray waits behind the others', () => {
  // Three places are enough for a nine only where little is: then it is torn, the third goes whole, and three more of it.
  const torn = goodInClamps({ clamps: 12, lots: [9, 9, 9] }).filter((run) =>
    run.some(([first]) => first === 3),
  );
  expect(torn.length).toBeGreaterThan(5);
  for (const run of torn) expect(run.find(([first]) => first === 3)).toEqual([3, 6]);
});

test('what goes into no piece comes for the greater part once a visit, so that a tray of one costs more than its share', () => {
  const took = (pieces: number, pace: number) => {
    const plan = aPlan([aStep(0, 3)], { lots: [aLot(pieces)], pace: { median: pace, logSd: 0 } });
    const { doneAt: all } = replicator({ plan, marks: [], seed: 1, replications: 200 })(0, 200);
    return [Math.min(...all) / minute, Math.max(...all) / minute];
  };
  // Ten pieces are the visit of 30 minutes that the pace was learnt from: 15 minutes go into none, however they are split.
  for (const end of took(10, 1.5)) expect(end).toBeCloseTo(45, 3);
  // Of one, its share alone would be 4.5 minutes; with half of the 15 once a visit 11.25, with all of them 18.
  const [least = 0, most = 0] = took(1, 1.5);
  expect(least).toBeGreaterThan(11.2);
  expect(least).toBeLessThan(12);
  expect(most).toBeGreaterThan(17.3);
  expect(most).toBeLessThan(18.05);
  // Hands that are quicker than their counted work are so at each piece.
  for (const end of took(1, 0.8)) expect(end).toBeCloseTo(2.4, 3);
});

test('what is due first is done first, and of that what is nearest to its end', () => {
  const variant = { wanted: 1, finished: 0, steps: [aStep(0, 1), aStep(1, 1)] };
  const plan = aPlan(variant.steps, {
    variants: [
      { ...variant, due: null },
      { ...variant, due: 10 * day },
    ],
    lots: [aLot(1, { step: 1 }), aLot(1), aLot(1, { variant: 1 })],
  });
  const found = replicator({ plan, marks: [2, 3, 4, 5].map((at) => at * minute), seed: 1, replications: 1 })(
    0,
    1,
  );
  expect([...found.good]).toEqual([0, 1, 1, 2, 1, 1, 1, 1]);
});

test('a piece that is sent back meets the stages between again and is tried there no more', () => {
  // It is certain to be sent back once: the second visit is of a lot of its own.
  const steps = [aStep(0, 1, { lost: known(0) }), aStep(1, 1), aStep(2, 1)];
  const plan = aPlan(steps, { lots: [aLot(1, { step: 0, redo: 2 })], goal: 'finished' });
  expect(doneAt(plan)).toBe(3 * minute);
  // On its way again it cannot be lost at the first two stages, where everything else is.
  const losing = [aStep(0, 1, { lost: known(1) }), aStep(1, 1, { lost: known(1) }), aStep(2, 1)];
  const runs = replicator({
    plan: aPlan(losing, { lots: [aLot(4, { redo: 2 }), aLot(3)] }),
    ...{ marks: [day], seed: 1, replications: 1 },
  })(0, 1);
  expect([runs.good[0], runs.scrapped[0]]).toEqual([4, 3]);
});

test('at the end of a day the pieces of the last tray count as far as it has come', () => {
  const people = [{ hours: workWeeks(2) }];
  // Nine pieces of an hour each from ten on: six by five o'clock, the last at eleven of the next day.
  const plan = aPlan([aStep(0, 60)], { people, now: 10 * hour, lots: [aLot(9)] });
  const marks = [12 * hour + 1, 17 * hour, day + 9 * hour + 1, day + 11 * hour];
  const { good, doneAt: done } = replicator({ plan, marks, seed: 1, replications: 1 })(0, 1);
  expect([...good]).toEqual([2, 6, 7, 9]);
  expect(done[0]).toBe(day + 11 * hour);
});

test('who goes on holiday leaves the rest of a tray to others', () => {
  const away = [
    { from: 0, to: hour },
    { from: 20 * day, to: 30 * day },
  ];
  const there = [{ from: hour, to: 30 * day }];
  const plan = aPlan([aStep(0, 20)], { people: [{ hours: away }, { hours: there }], lots: [aLot(6)] });
  expect(doneAt(plan)).toBe(2 * hour);
});

test('of each bad plan the reason is said', () => {
  const asked = (plan: PlanModel) =>
    forecast({ plan, marks: [day], seed: 1, replications: 3, confidence: 0.9 });
  const plan = aPlan([aStep(0, 5)], { lots: [aLot(3)] });
  expect(asked({ ...plan, people: [] })).toEqual({ kind: 'no-hands' });
  expect(asked({ ...plan, people: [{ hours: [] }] })).toEqual({ kind: 'no-hands' });
  expect(asked({ ...plan, now: 10 * day, people: [{ hours: [{ from: 0, to: day }] }] })).toEqual({
    kind: 'no-hands',
  });
  const noClamps = { resources: [{ name: 'clamps', capacity: 0 }] };
  const hold = { kind: 'hold', resource: 0, cureMinutes: 5 } as const;
  expect(asked({ ...plan, ...noClamps, stages: [hold] })).toEqual({ kind: 'capacity-zero', resource: 0 });
  // Nobody needs them.
  expect(asked({ ...plan, ...noClamps }).kind).toBe('forecast');
  // The calendar ends before the work does.
  expect(asked({ ...plan, people: [{ hours: [{ from: 0, to: minute }] }] })).toEqual({ kind: 'never-done' });
  // For ever sent back, in time and out of time.
  for (const minutes of [5, 0]) {
    const loop = [aStep(0, minutes, { back: known(1), backTo: [{ step: 0, weight: 1 }] })];
    expect(asked(aPlan(loop, { lots: [aLot(3)] }))).toEqual({ kind: 'never-done' });
  }
});

test('with nothing in work everything is done now', () => {
  const found = forecast({
    plan: aPlan([aStep(0, 5)]),
    marks: [day],
    seed: 1,
    replications: 5,
    confidence: 0.9,
  });
  expect(found).toMatchObject({
    kind: 'forecast',
    done: { at50: 0, at95: 0, share: 1 },
    enough: { at50: 0 },
  });
});

test('more wanted than there can be are never enough, and one wanted and there already is enough now', () => {
  const variant = { wanted: 4, finished: 0, due: -day, steps: [aStep(0, 5)] };
  const plan = aPlan(variant.steps, { variants: [variant], lots: [aLot(3)] });
  const asked = (wanted: number, finished: number) =>
    forecast({
      plan: { ...plan, variants: [{ ...variant, wanted, finished }] },
      ...{ marks: [day], seed: 1, replications: 5, confidence: 0.9 },
    });
  expect(asked(4, 0)).toMatchObject({ enough: { at50: null, share: 0 }, done: { at50: 15 * minute } });
  expect(asked(4, 1)).toMatchObject({ enough: { at50: 15 * minute, share: 1 } });
  expect(asked(1, 1)).toMatchObject({ enough: { at50: 0, share: 1 } });
});

test('a plan that speaks of what is not there is refused', () => {
  const plan = aPlan([aStep(0, 5)], { lots: [aLot(3)] });
  const asked = (bad: Partial<PlanModel>) => () => doneAt({ ...plan, ...bad });
  expect(asked({ lots: [aLot(0)] })).toThrow(RangeError);
  expect(asked({ lots: [aLot(1, { variant: 1 })] })).toThrow(RangeError);
  expect(asked({ lots: [aLot(1, { step: 1 })] })).toThrow(RangeError);
  expect(asked({ stages: [{ kind: 'work', resource: 0 }] })).toThrow(RangeError);
  expect(asked({ people: [{ hours: [{ from: 5, to: 5 }] }] })).toThrow(RangeError);
  expect(asked({ pace: { median: 0, logSd: 0 } })).toThrow(RangeError);
  expect(() => doneAt(aPlan([aStep(0, Number.NaN)], { lots: [aLot(1)] }))).toThrow(RangeError);
  expect(() => replicator({ plan, marks: [2, 1], seed: 1, replications: 1 })).toThrow(RangeError);
});
