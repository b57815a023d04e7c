import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { batchTargets } from '../../../src/domain/rollup/batch-targets.ts';
import { planQuestions } from '../../../src/screens/plan/plan-question.ts';
import { costsOf, noCosts } from '../../../src/screens/plan/starts-view.ts';
import { readTargets, targetsDraftOf, withTargets } from '../../../src/screens/plan/targets-draft.ts';
import { hoursRows, shopHours } from '../../../src/screens/plan/targets-view.ts';
import { startsWords } from '../../../src/words/starts-words.ts';
import { aWorkshop, lowered } from '../../support/a-shop.ts';
import { batch, person, route, stage, variant } from '../../support/workshop.ts';

const day = (text: string) => v.parse(shopDayText, text);
const spring = {
  ...{ name: 'spring', route: route.haft, retired: false, due: day('2026-03-06'), chance: 80 },
  wanted: [{ variant: variant['ash-copper'], good: 20 }],
};

describe('targets that are typed', () => {
  test('are the same when read back', () => {
    const read = readTargets(targetsDraftOf(spring));
    expect(read.ok && withTargets(spring, read.value)).toEqual(spring);
  });

  test('without a chance go by the usual one, and want nothing where a field is empty or nought', () => {
    const wanted = new Map([
      [variant['ash-copper'], ' '],
      [variant['plum-copper'], '0'],
      [variant['ash-nickel'], '3'],
    ]);
    const read = readTargets({ due: '', chance: '', wanted });
    expect(read.ok && withTargets(spring, read.value)).toEqual({
      ...{ name: 'spring', route: route.haft, retired: false, due: null },
      wanted: [{ variant: variant['ash-nickel'], good: 3 }],
    });
  });

  test.each([
    [{ due: '2026-02-30' }, 'due'],
    [{ chance: '49' }, 'chance'],
    [{ wanted: new Map([[variant['ash-copper'], '1e9']]) }, 'wanted'],
  ])('%j are refused', (part, field) => {
    expect(readTargets({ ...targetsDraftOf(spring), ...part })).toMatchObject({
      ok: false,
      problems: { [field]: expect.any(String) },
    });
  });
});

describe('what the log is asked', () => {
  const shop = aWorkshop();
  shop.set({ register: 'batch', id: batch.spring, value: spring });
  const tray = shop.tray('ash-copper', 9);
  shop.pass(tray, 'bore', { pieces: 4 });
  shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered, pieces: 2 });
  shop.tray('plum-copper', 5);
  const batches = batchTargets(shop.shop);

  test('counts seconds where they are good ones, and leaves out what nobody wants', () => {
    const standing = (goal: 'firsts' | 'finished') =>
      planQuestions(shop.shop.registers, { batches, goal }).starts.map((asked) => asked.standing);
    expect(standing('firsts')).toEqual([
      [
        { stage: stage.bore, pieces: 3 },
        { stage: stage.glue, pieces: 4 },
      ],
    ]);
    expect(standing('finished')[0]?.[1]).toEqual({ stage: stage.glue, pieces: 6 });
  });

  test('has the confidence of the batch, and knows which stages cure by themselves', () => {
    const { starts, holds } = planQuestions(shop.shop.registers, { batches, goal: 'firsts' });
    expect([starts[0]?.confidence, holds]).toEqual([0.8, [stage.glue]]);
  });
});

describe('the hours of a batch', () => {
  const shop = aWorkshop();
  shop.set({ register: 'batch', id: batch.spring, value: spring });
  const usual = { from: 480, to: 540, breakMinutes: 0 };
  const week = [usual, usual, usual, usual, usual, null, null];
  shop.set({ register: 'person', id: person.edda, value: { name: 'Edda', retired: false, week } });
  const batches = batchTargets(shop.shop).filter((each) => each.batch === batch.spring);
  const hours = shopHours(shop.shop.registers);
  const verdict = (
    needed: { minutes: number; unknown: (typeof stage.bore)[] } | null,
    today = '2026-03-02',
  ) => {
    const study = needed && {
      starts: [],
      times: [],
      costs: null,
      constraint: null,
      reviews: [],
      judged: 1,
      planned: null,
      hours: [{ batch: batch.spring, stages: [], ...needed }],
    };
    return hoursRows(batches, { hours, today: day(today), study })[0]?.verdict;
  };

  // Monday to Friday, an hour each: five hours.
  test.each([
    [{ minutes: 300, unknown: [] }, 'enough'],
    [{ minutes: 301, unknown: [] }, 'short'],
    [{ minutes: 100, unknown: [stage.turn] }, 'unknown'],
    [{ minutes: 301, unknown: [stage.turn] }, 'short'],
    [{ minutes: 0, unknown: [] }, 'done'],
    [null, 'unknown'],
  ])('%j needed of five: %s', (needed, expected) => {
    expect(verdict(needed)).toBe(expected);
  });

  test('are past with the due day', () => {
    expect(verdict({ minutes: 10, unknown: [] }, '2026-03-07')).toBe('past');
  });
});

test.each([
  [noCosts, null],
  [{ ...noCosts, perShort: '30' }, null],
  [
    { perStart: '', perShort: '30', perOver: '0' },
    { perStart: 0, perShort: 3000, perOver: 0 },
  ],
  [{ perStart: '-1', perShort: '30', perOver: '0' }, null],
])('costs typed as %j', (draft, costs) => {
  expect(costsOf(draft)).toEqual(costs);
});

test('a chance is never said to be certain, or none, where it is neither', () => {
  expect([0, 0.001, 0.5, 0.9949, 0.999, 1].map(startsWords.chance)).toEqual([
    ...['0 %', 'under 1 %', '50 %', '99 %', 'over 99 %', '100 %'],
  ]);
});
