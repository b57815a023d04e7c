import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { shopDayText } from '../../../../src/domain/log/ids.ts';
import {
  judgeTargets,
  newTargetsOf,
  type TargetLine,
} from '../../../../src/domain/plan/targets/judge-targets.ts';
import { readDue } from '../../../../src/domain/plan/targets/read-target-cells.ts';
import { factOf } from '../../../../src/domain/shop/registers.ts';
import { aWorkshop } from '../../../support/a-shop.ts';
import { batch, route, variant } from '../../../support/workshop.ts';

const due = v.parse(shopDayText, '2026-04-30');
const springFact = {
  name: 'spring',
  route: route.haft,
  wanted: [{ variant: variant['ash-copper'], good: 60 }],
  due,
  retired: false,
};

function springShop() {
  const workshop = aWorkshop();
  workshop.set({ register: 'batch', id: batch.spring, value: springFact });
  return workshop;
}

const line = (part: Partial<TargetLine>, number = 2): TargetLine => ({
  ...{ line: number, batch: 'spring', variant: 'ash with copper', good: '60', due: '', chance: '' },
  ...part,
});
const judge = (...parts: Partial<TargetLine>[]) =>
  judgeTargets(
    springShop().shop,
    parts.map((part, at) => line(part, at + 2)),
  );

describe('a line that is understood', () => {
  test.each([
    ['says what is so already', {}, {}],
    ['wants more', { good: '80' }, { good: { from: 60, to: 80 } }],
    ['wants none', { good: '0' }, { good: { from: 60, to: 0 } }],
    ['leaves what is empty', { good: '', due: '', chance: '' }, {}],
    [
      'wants a variant for the first time',
      { variant: 'plum with copper', good: '7' },
      { good: { from: 0, to: 7 } },
    ],
    ['names another day', { due: '2026-05-01' }, { due: { from: due, to: '2026-05-01' } }],
    ['names a chance', { chance: '95 %' }, { chance: { from: 90, to: 95 } }],
    ['names the usual chance', { chance: '90' }, {}],
    [
      'is typed in other letters',
      { batch: ' SPRING ', variant: 'Ash  with Copper', good: '61' },
      { good: { from: 60, to: 61 } },
    ],
  ])('%s', (_, part, changes) => {
    expect(judge(part)).toMatchObject([{ kind: 'understood', batch: batch.spring, changes }]);
    const [judged] = judge(part);
    expect(judged?.kind === 'understood' && judged.changes).toEqual(changes);
  });
});

describe('a line that is not understood says why', () => {
  test.each([
    [{ batch: '' }, { kind: 'no-name', column: 'batch' }],
    [{ variant: ' ' }, { kind: 'no-name', column: 'variant' }],
    [{ batch: 'Winter' }, { kind: 'unknown', column: 'batch', name: 'Winter' }],
    [{ variant: 'teak' }, { kind: 'unknown', column: 'variant', name: 'teak' }],
    [{ good: '-5' }, { kind: 'number', column: 'good', problem: { kind: 'too-small', least: 0 } }],
    [{ good: '1e9' }, { kind: 'number', column: 'good', problem: { kind: 'too-large', most: 99_999 } }],
    [{ good: 'sixty' }, { kind: 'number', column: 'good', problem: { kind: 'not-a-number' } }],
    [{ good: '1,000' }, { kind: 'separated', column: 'good', text: '1,000' }],
    [{ good: '1.000' }, { kind: 'separated', column: 'good', text: '1.000' }],
    [{ good: '1 000' }, { kind: 'separated', column: 'good', text: '1 000' }],
    [{ chance: '100' }, { kind: 'number', column: 'chance', problem: { kind: 'too-large', most: 99 } }],
    [{ chance: '0.9' }, { kind: 'separated', column: 'chance', text: '0.9' }],
    [{ due: '2026-02-30' }, { kind: 'no-day', text: '2026-02-30' }],
    [{ due: '03/04/2026' }, { kind: 'which-day', text: '03/04/2026' }],
    [{ broken: 'quote' as const }, { kind: 'broken', how: 'quote' }],
  ])('%j', (part, problem) => {
    expect(judge(part)).toMatchObject([{ kind: 'refused', problem }]);
  });

  test('when an earlier line has said something of the same variant, alike or not', () => {
    expect(judge({ good: '70' }, { good: '70' }, { good: '80' })).toMatchObject([
      { kind: 'understood' },
      { kind: 'refused', problem: { kind: 'said-before', column: 'good', line: 2 } },
      { kind: 'refused', problem: { kind: 'said-before', column: 'good', line: 2 } },
    ]);
  });

  test('when it names another due day or chance of the batch than an earlier line', () => {
    const plum = { variant: 'plum with copper', good: '1' };
    expect(judge({ due: '2026-05-01' }, { ...plum, due: '2026-05-02' })[1]).toMatchObject({
      problem: { kind: 'said-before', column: 'due', line: 2 },
    });
    expect(judge({ chance: '80' }, { ...plum, chance: '85' })[1]).toMatchObject({
      problem: { kind: 'said-before', column: 'chance', line: 2 },
    });
    expect(judge({ due: '2026-05-01' }, { ...plum, due: '2026-05-01' })[1]).toMatchObject({
      kind: 'understood',
    });
  });

  test('when the batch or the variant was put away', () => {
    const workshop = springShop();
    const ash = factOf(workshop.shop.registers, { register: 'variant', id: variant['plum-copper'] });
    if (!ash) throw new Error('no such variant');
    workshop.set({ register: 'variant', id: variant['plum-copper'], value: { ...ash, retired: true } });
    workshop.set({
      register: 'batch',
      id: batch.autumn,
      value: { ...springFact, name: 'autumn', retired: true },
    });
    expect(
      judgeTargets(workshop.shop, [line({ variant: 'plum with copper' }), line({ batch: 'autumn' })]),
    ).toMatchObject([
      { problem: { kind: 'put-away', column: 'variant' } },
      { problem: { kind: 'put-away', column: 'batch' } },
    ]);
  });
});

test.each([
  ['30.04.2026', '2026-04-30'],
  ['30/04/2026', '2026-04-30'],
  ['4/30/2026', '2026-04-30'],
  ['4/4/2026', '2026-04-04'],
  ['', null],
])('the day “%s” can mean but one', (text, expected) => {
  expect(readDue(text)).toEqual({ ok: true, value: expected });
});

test('ten thousand lines of unknown names each have their answer, and the one that is known is understood', () => {
  const lines = Array.from({ length: 10_000 }, (_, at) => line({ batch: `nothing ${at}` }, at + 2));
  const judged = judgeTargets(springShop().shop, [...lines, line({ good: '61' }, 10_002)]);
  expect(judged).toHaveLength(10_001);
  expect(judged.filter(({ kind }) => kind === 'refused')).toHaveLength(10_000);
  expect(newTargetsOf(judged)).toEqual([
    { batch: batch.spring, good: [{ variant: variant['ash-copper'], good: 61 }] },
  ]);
});

test('what was understood is written in one act, and what is not said stays', () => {
  const workshop = springShop();
  const judged = judgeTargets(workshop.shop, [
    line({ good: '0', due: '2026-05-01' }),
    line({ variant: 'plum with copper', good: '12', chance: '95' }, 3),
    line({ batch: 'autumn', variant: 'ash with nickel', good: '5' }, 4),
  ]);
  const targets = newTargetsOf(judged);
  const events = workshop.act({ kind: 'set-targets', targets });
  expect(events).toHaveLength(2);
  const fact = (id: (typeof batch)['spring']) => factOf(workshop.shop.registers, { register: 'batch', id });
  expect(fact(batch.spring)).toEqual({
    ...springFact,
    wanted: [{ variant: variant['plum-copper'], good: 12 }],
    due: '2026-05-01',
    chance: 95,
  });
  expect(fact(batch.autumn)).toMatchObject({
    wanted: [{ variant: variant['ash-nickel'], good: 5 }],
    due: null,
  });
});
