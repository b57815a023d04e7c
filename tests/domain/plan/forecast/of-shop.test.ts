import { expect, test } from 'vitest';
import type { SpeciesId, StageId, VariantId } from '../../../../src/domain/log/ids.ts';
import { chanceBeliefs, rareAs } from '../../../../src/domain/plan/forecast/chance-beliefs.ts';
import { minutesBeliefs } from '../../../../src/domain/plan/forecast/minutes-beliefs.ts';
import { modelOfShop, type ShopToPlan } from '../../../../src/domain/plan/forecast/model-of-shop.ts';
import { paceOf } from '../../../../src/domain/plan/forecast/pace.ts';
import type { Chance } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { hoursOf } from '../../../../src/domain/plan/forecast/shift-hours.ts';
import { stageBeliefs } from '../../../../src/domain/plan/starts/stage-beliefs.ts';
import type { StageTime } from '../../../../src/domain/study/piece-times.ts';
import type { StageTrials } from '../../../../src/domain/study/stage-trials.ts';
import { day, hour } from './plans.ts';

const [ash, yew] = ['ash' as SpeciesId, 'yew' as SpeciesId];
const [glue, turn, check] = ['glue' as StageId, 'turn' as StageId, 'check' as StageId];
const awl = 'awl' as VariantId;

const tried = (stage: StageId, [atRisk, lost, lowered]: readonly [number, number, number]): StageTrials => ({
  ...{ stage, finished: { atRisk, lost }, firsts: { atRisk, lost: lost + lowered } },
  ...{ firstPass: { of: atRisk, out: atRisk - lost }, repeats: 0 },
});

function took(
  stage: StageId,
  species: SpeciesId,
  mean: number,
  more: Partial<StageTime['time']> = {},
): StageTime {
  const interval = [mean * 0.9, mean / 0.9] as const;
  const time = { mean, median: mean, meanInterval: interval, medianInterval: interval, cv: 0.3, pieces: 60 };
  const breaks = { stretches: 0, minutes: 0, pieces: 0 };
  return { stage, species, of: 'work', time: { ...time, minutes: 60 * mean, breaks, ...more } };
}

const shop: ShopToPlan = {
  ...{ now: 10 * day, goal: 'firsts', resources: [{ name: 'clamps', capacity: 12 }] },
  stages: [
    { id: glue, kind: 'hold', resource: 0, cureMinutes: 600 },
    { id: turn, kind: 'work', resource: null },
    { id: check, kind: 'work', resource: null },
  ],
  people: [[{ from: 10 * day + 8 * hour, to: 10 * day + 17 * hour, breakMinutes: 60 }]],
  variants: [{ id: awl, species: ash, route: [glue, turn, check], wanted: 20, finished: 3, due: 20 * day }],
  standings: [],
  starts: [],
  trials: [
    { group: ash, stages: [tried(glue, [40, 1, 0]), tried(turn, [40, 4, 2])] },
    { group: yew, stages: [tried(turn, [30, 9, 0])] },
  ],
  back: [{ stage: check, species: ash, visits: 50, to: new Map([[turn, 4]]) }],
  times: [took(turn, ash, 4), took(turn, yew, 5), took(check, ash, 1)],
  days: [],
};

const mean = (chance: Chance) =>
  chance.kind === 'known' ? chance.chance : chance.alpha / (chance.alpha + chance.beta);

test('what is lost is believed as the reject allowance believes it', () => {
  const { trials } = shop;
  const route = [glue, turn, check];
  const believed = stageBeliefs(trials, { route, goal: 'finished' });
  for (const species of [ash, yew])
    for (const [at, stage] of route.entries()) {
      const met = trials.flatMap(({ group, stages }) => {
        const step = stages.find((each) => each.stage === stage)?.finished;
        return step ? [{ species: group, met: step.lost, of: step.atRisk }] : [];
      });
      // As `stageBeliefs` has it, before anything is known of other stages.
      const prior = { alpha: 1 / 3, beta: 1 + (3 - at - 1) / 3 };
      const found = chanceBeliefs(met, prior)(species);
      const of = believed(species)[at];
      expect(mean(found)).toBeCloseTo(1 - (of?.alpha ?? 0) / ((of?.alpha ?? 0) + (of?.beta ?? 0)), 9);
    }
});

test('a stage of which nothing is known is like the others, and before anything is known all are alike', () => {
  const meanOf = ({ alpha, beta }: { alpha: number; beta: number }) => alpha / (alpha + beta);
  const asked = { stages: 14, share: 1 };
  // A piece comes through all of fourteen stages with about even chances.
  expect((1 - meanOf(rareAs([], asked))) ** 14).toBeGreaterThan(0.45);
  expect((1 - meanOf(rareAs([], asked))) ** 14).toBeLessThan(0.55);
  const seen = Array.from({ length: 14 }, () => ({ species: ash, met: 2, of: 200 }));
  expect(meanOf(rareAs(seen, asked))).toBeCloseTo(0.01, 3);
  expect(meanOf(rareAs([{ species: ash, met: 9, of: 9 }], { stages: 1, share: 1 }))).toBe(0.5);
});

test('a wood that never was there shares its doubt with the others, one with many pieces has its own', () => {
  const found = chanceBeliefs(
    [
      { species: ash, met: 200, of: 4000 },
      { species: yew, met: 1, of: 4 },
    ],
    rareAs([], { stages: 3, share: 1 }),
  );
  const sharedOf = (species: SpeciesId) => {
    const chance = found(species);
    return chance.kind === 'beta' ? chance.shared : Number.NaN;
  };
  expect(sharedOf(ash)).toBeLessThan(0.05);
  expect(sharedOf(yew)).toBeGreaterThan(sharedOf(ash));
  expect(mean(found(ash))).toBeCloseTo(0.05, 2);
});

test('minutes: a wood leans on its stage, a stage without a time on the others, and of none nothing is believed', () => {
  const found = minutesBeliefs(shop.times);
  expect(found?.(turn, ash, 'work').median).toBeGreaterThan(3.9);
  expect(found?.(turn, ash, 'work').median).toBeLessThan(4.4);
  const other = found?.(turn, 'oak' as SpeciesId, 'work');
  expect(other?.median).toBeGreaterThan(4);
  expect(other?.median).toBeLessThan(5);
  expect(other?.logSd).toBeGreaterThan(found?.(turn, ash, 'work').logSd ?? 1);
  // Of glueing there is no time at all: somewhere between the others, and far from sure.
  const unknown = found?.(glue, ash, 'loading');
  expect(unknown?.median).toBeGreaterThan(1);
  expect(unknown?.median).toBeLessThan(5);
  expect(unknown?.logSd).toBeGreaterThan(0.5);
  expect(minutesBeliefs([])).toBeUndefined();
});

test('one piece tells something, and little', () => {
  const one = took(turn, ash, 4, { meanInterval: undefined, pieces: 1, cv: 0.02 });
  const found = minutesBeliefs([one])?.(turn, ash, 'work');
  expect(found?.median).toBeCloseTo(4, 6);
  expect(found?.logSd).toBeGreaterThan(0.4);
});

test('the pace is hours over what was made in them, and the surer the more days there are', () => {
  const days = (count: number) =>
    Array.from({ length: count }, (_, at) => ({ hours: 480, busy: 400, usual: at % 2 === 0 ? 380 : 420 }));
  const [few, many] = [paceOf(days(6), 10), paceOf(days(60), 10)];
  expect(many.median).toBeCloseTo(1.2, 2);
  expect(many.logSd).toBeLessThan(few.logSd);
  // Ten days to come differ as the days before did: 5 % a day.
  expect(many.logSd).toBeGreaterThan(0.05 / Math.sqrt(10));
  expect(paceOf([], 10).logSd).toBe(0.2);
  expect(paceOf([{ hours: 480, busy: 0, usual: 0 }], 10)).toEqual(paceOf([], 10));
  // A day off in the middle of work counts, and one on which everything cured does not.
  expect(paceOf([...days(6), { hours: 480, busy: 0, usual: 0 }], 10).median).toBeGreaterThan(few.median);
  expect(paceOf([...days(6), { hours: 0, busy: 0, usual: 0 }], 10)).toEqual(few);
  // Hands that were busy for longer than there seemed to be work were at work.
  const busier = days(60).map((each) => ({ ...each, hours: 300, busy: 440 }));
  expect(paceOf(busier, 10).median).toBeCloseTo(1.1, 2);
});

test('breaks lie in the middle of a day, and a day of breaks alone has no hours', () => {
  expect(hoursOf({ from: 8 * hour, to: 17 * hour, breakMinutes: 60 })).toEqual([
    { from: 8 * hour, to: 12 * hour },
    { from: 13 * hour, to: 17 * hour },
  ]);
  expect(hoursOf({ from: 0, to: hour, breakMinutes: 0 })).toEqual([{ from: 0, to: hour }]);
  expect(hoursOf({ from: 0, to: hour, breakMinutes: 60 })).toEqual([]);
});

test('trays stand where they are, by grade and on their way again; starts come in trays', () => {
  const place = { stage: turn, grade: 'first', redo: null } as const;
  const found = modelOfShop({
    ...shop,
    standings: [
      { variant: awl, place: { at: 'waiting', ...place }, pieces: 5 },
      { variant: awl, place: { at: 'waiting', ...place, grade: 'second', redo: check }, pieces: 2 },
      { variant: awl, place: { at: 'held', ...place, stage: glue, ready: 11 * day }, pieces: 7 },
      { variant: awl, place: { at: 'waiting', ...place }, pieces: -1 },
      { variant: awl, place: { at: 'waiting', ...place, stage: 'sealed' as StageId }, pieces: 3 },
    ],
    starts: [{ variant: awl, pieces: 20, each: 9, at: 12 * day }],
  });
  if (found.kind !== 'model') throw new Error(found.kind);
  const lots = found.plan.lots.map(({ step, firsts, seconds, redo, at, ready }) => [
    step,
    firsts,
    seconds,
    redo,
    at,
    ready,
  ]);
  expect(lots).toEqual([
    [1, 5, 0, null, 'waiting', 10 * day],
    [1, 0, 2, 2, 'waiting', 10 * day],
    [0, 7, 0, null, 'held', 11 * day],
    [0, 9, 0, null, 'waiting', 12 * day],
    [0, 9, 0, null, 'waiting', 12 * day],
    [0, 2, 0, null, 'waiting', 12 * day],
  ]);
  expect(found.notes).toEqual([
    { kind: 'pieces-below-zero', variant: awl, stage: turn },
    { kind: 'not-on-route', variant: awl, stage: 'sealed', pieces: 3 },
    { kind: 'stage-without-time', stage: glue },
  ]);
  const [steps] = found.plan.variants.map((variant) => variant.steps);
  expect(steps?.[2]?.backTo).toEqual([{ step: 1, weight: 4 }]);
  expect(steps?.[1]?.back).toEqual({ kind: 'known', chance: 0 });
  expect(found.plan.people[0]?.hours).toHaveLength(2);
});

test('a shop without a single time cannot be forecast', () => {
  expect(modelOfShop({ ...shop, times: [] })).toEqual({ kind: 'no-history' });
});
