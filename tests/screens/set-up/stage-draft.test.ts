import { describe, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import {
  readStage,
  type StageDraft,
  stageDraftOf,
  usualPlacing,
  withStage,
} from '../../../src/screens/set-up/stage-draft.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import { reason, route, stage } from '../../support/workshop.ts';

const nowhere = { kind: 'nowhere' } as const;
const empty = { curing: 0 };
const hold: StageDraft = { ...stageDraftOf(undefined, nowhere), name: 'Varnish dries', kind: 'hold' };
const read = (part: Partial<StageDraft>) => readStage({ ...hold, ...part }, empty);

test('every stage that is read back from the shop is the same stage', () => {
  const { registers } = aWorkshop().shop;
  for (const id of Object.values(stage)) {
    const fact = factOf(registers, { register: 'stage', id });
    expect(readStage(stageDraftOf(fact, nowhere), empty)).toEqual({ ok: true, value: fact });
  }
});

describe('the time to cure', () => {
  test.each([
    ['12', '0', 720],
    ['0', '30', 30],
    ['', '45', 45],
    ['1.5', '', 90],
    ['0,25', '5', 20],
    ['2160', '0', 129_600],
    ['0', '1', 1],
  ])('“%s” hours and “%s” minutes are %i minutes', (hours, minutes, cureMinutes) => {
    expect(read({ hours, minutes })).toMatchObject({ ok: true, value: { cureMinutes } });
  });

  test.each([
    ['-3', '0', { hours: 'Hours are a number such as 12 or 0.5.' }],
    ['1e9', '0', { hours: 'Hours are a number such as 12 or 0.5.' }],
    ['a night', '0', { hours: 'Hours are a number such as 12 or 0.5.' }],
    ['0', '2.5', { minutes: 'Minutes are a whole number such as 30.' }],
    ['0', '-3', { minutes: 'Minutes are a whole number such as 30.' }],
    ['0', '0', { hours: 'A cure takes between a minute and 90 days (2,160 hours).' }],
    ['', '', { hours: 'A cure takes between a minute and 90 days (2,160 hours).' }],
    ['2160', '1', { hours: 'A cure takes between a minute and 90 days (2,160 hours).' }],
  ])('“%s” hours and “%s” minutes are refused at the field', (hours, minutes, problems) => {
    expect(read({ hours, minutes })).toMatchObject({ ok: false, problems });
  });
});

describe('the places of a hold', () => {
  test('that are not filled in are no limit', () => {
    expect(read({ capacity: ' ' })).toMatchObject({ ok: true, value: { capacity: null } });
    expect(read({ capacity: '12' })).toMatchObject({ ok: true, value: { capacity: 12 } });
  });

  test.each([
    ['0', 'At least 1.'],
    ['-3', 'At least 1.'],
    ['1e9', 'At most 9999.'],
    ['2.5', 'Whole pieces only.'],
    ['many', 'This is not a number.'],
  ])('“%s” are refused: %s', (capacity, words) => {
    expect(read({ capacity })).toMatchObject({ ok: false, problems: { capacity: words } });
  });
});

test('what is wrong with a cure counts only while the stage is a hold', () => {
  const wrong = { hours: '-3', capacity: '0' };
  expect(read(wrong).ok).toBe(false);
  expect(read({ ...wrong, kind: 'bench' })).toMatchObject({ ok: true, value: { kind: 'bench' } });
});

test('a hold where pieces cure stays a hold until they are out', () => {
  const bench: StageDraft = { ...hold, kind: 'bench' };
  expect(readStage(bench, { curing: 12 })).toMatchObject({
    ok: false,
    problems: { kind: '12 pieces cure here. Take them out before the kind changes.' },
  });
  expect(readStage(hold, { curing: 12 }).ok).toBe(true);
});

test('the order of the flaw buttons is kept', () => {
  const reasons = [reason.scratch, reason.catch, reason.gap];
  expect(read({ kind: 'bench', reasons })).toMatchObject({ ok: true, value: { reasons } });
});

describe('a new stage', () => {
  test('goes to the end of the first route until the maker says otherwise', () => {
    const { registers } = aWorkshop().shop;
    expect(usualPlacing(registers)).toEqual({ kind: 'after', route: route.haft, stage: stage.photo });
    expect(usualPlacing(aShop().shop.registers)).toEqual({ kind: 'nowhere' });
  });

  test('comes to stand after the stage that was named, or at the start', () => {
    const stages = [stage.bore, stage.glue, stage.turn];
    const after = { kind: 'after', route: route.haft, stage: stage.glue } as const;
    expect(withStage(stages, { stage: stage.wax, placing: after })).toEqual([
      ...[stage.bore, stage.glue, stage.wax, stage.turn],
    ]);
    expect(withStage(stages, { stage: stage.wax, placing: { kind: 'start', route: route.haft } })).toEqual([
      stage.wax,
      ...stages,
    ]);
  });

  test('comes to stand at the end when the stage that was named has left the route since', () => {
    const placing = { kind: 'after', route: route.haft, stage: stage.sand } as const;
    expect(withStage([stage.bore, stage.glue], { stage: stage.wax, placing })).toEqual([
      ...[stage.bore, stage.glue, stage.wax],
    ]);
  });
});
