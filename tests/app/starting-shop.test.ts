import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { startingFacts } from '../../src/app/starting-shop.ts';
import { stageId } from '../../src/domain/log/ids.ts';
import { liveStages } from '../../src/domain/route/live-stages.ts';
import { registerSchema } from '../../src/domain/set-up/register.ts';
import { factOf, factsOf } from '../../src/domain/shop/registers.ts';
import { aShop } from '../support/a-shop.ts';

const facts = startingFacts('Europe/Vienna');

/** A shop that was begun with the facts, each of them judged like a maker's own. */
function begun() {
  const shop = aShop();
  for (const set of facts) shop.set(set);
  return shop.shop;
}

test('every fact of a new shop has the form that the log keeps', () => {
  for (const set of facts) expect(v.safeParse(registerSchema, set).issues, set.id).toBeUndefined();
});

test('a new shop is in the zone of its tablet', () => {
  expect(factOf(begun().registers, { register: 'shop', id: 'shop' })?.zone).toBe('Europe/Vienna');
});

test('no two facts of a kind have one name, and none is put away', () => {
  // Each fact was judged: a name that is taken would have been refused.
  const { registers } = begun();
  expect(registers.size).toBe(facts.length);
  for (const { value } of facts) expect('retired' in value && value.retired).toBe(false);
});

describe('the route for turned handles', () => {
  const { registers } = begun();
  const stages = liveStages(registers);
  const fact = (id: string) => factOf(registers, { register: 'stage', id: v.parse(stageId, id) });

  test('goes through every stage once, some fourteen of them, and a batch is on it from the start', () => {
    expect(stages).toHaveLength(factsOf(registers, 'stage').length);
    expect(new Set(stages).size).toBe(stages.length);
    expect(stages.length).toBeGreaterThanOrEqual(12);
    expect(stages.length).toBeLessThanOrEqual(16);
    expect(factsOf(registers, 'batch')).toHaveLength(1);
  });

  test('has the steps of the trade in their order (common practice, no source)', () => {
    const order = [
      'cut-and-bore',
      'glue-up',
      'glue-cures',
      'rough-turn',
      'sand',
      'seal',
      'sealer-cures',
      'wax',
      'test',
    ];
    expect(stages.filter((id) => order.includes(id))).toEqual(order);
  });

  test('lets glue and sealer cure right after they are put on, with no limit that the maker has not set', () => {
    for (const [before, hold] of [
      ['glue-up', 'glue-cures'],
      ['seal', 'sealer-cures'],
    ] as const) {
      expect(stages[stages.indexOf(v.parse(stageId, before)) + 1]).toBe(hold);
      expect(fact(hold)).toMatchObject({ kind: 'hold', capacity: null });
    }
  });

  test('grades pieces at the end, before they are photographed', () => {
    expect(stages.slice(-2).map((id) => fact(id)?.kind)).toEqual(['check', 'record']);
  });
});

test('every flaw button of every stage has its reason, and every stage that makes or judges has one', () => {
  const { registers } = begun();
  for (const { id, fact } of factsOf(registers, 'stage')) {
    for (const reason of fact.reasons)
      expect(factOf(registers, { register: 'reason', id: reason }), `${id} ${reason}`).toBeDefined();
    if (fact.kind !== 'record') expect(fact.reasons.length, id).toBeGreaterThan(0);
  }
});

test('every reason of a new shop has a button somewhere', () => {
  const { registers } = begun();
  const used = new Set(factsOf(registers, 'stage').flatMap(({ fact }) => fact.reasons));
  expect(factsOf(registers, 'reason').filter(({ id }) => !used.has(id))).toEqual([]);
});

test.each([
  ['cut-and-bore', 'mask'],
  ['glue-up', 'data sheet'],
  ['rough-turn', 'Face shield'],
  ['shape', 'Face shield'],
  ['sand', 'mask'],
  ['seal', 'data sheet'],
  ['polish', 'Face shield'],
  ['dress-ferrule', 'Face shield'],
  ['wax', 'rags'],
])('the caution at %s speaks of the %s (common practice, no source)', (id, word) => {
  const found = facts.find((set) => set.register === 'stage' && set.id === id);
  expect(found?.register === 'stage' && found.value.caution).toContain(word);
});
