import { describe, expect, test } from 'vitest';
import type { BatchId, RouteId, SpeciesId, StageId } from '../../../src/domain/log/ids.ts';
import type { MarkFact } from '../../../src/domain/set-up/facts.ts';
import type { RegisterName, RegisterOf, RegisterSet } from '../../../src/domain/set-up/register.ts';
import { longestMarkNote, longestName, longestNote } from '../../../src/domain/set-up/text-schema.ts';
import { factOf, factsOf } from '../../../src/domain/shop/registers.ts';
import { eventWords } from '../../../src/words/event-words.ts';
import { nameOf } from '../../../src/words/names.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import {
  batch,
  mark,
  reason,
  route,
  routeStages,
  setUpFacts,
  species,
  stage,
  variant,
} from '../../support/workshop.ts';

/** A fact of the test workshop, changed. */
function fact<Name extends RegisterName>(
  register: Name,
  id: string,
  change: Partial<RegisterOf<Name>['value']> = {},
): RegisterSet {
  const known = setUpFacts.find((set) => set.register === register && set.id === id);
  if (!known) throw new Error(`no ${register} ${id}`);
  return { ...known, value: { ...known.value, ...change } } as RegisterSet;
}

const refusal = (set: RegisterSet) => aWorkshop().refusal({ kind: 'set', set });
const ash = (name: string): RegisterSet => fact('species', species.ash, { name });

describe('setting up a fact', () => {
  test('keeps the whole new value', () => {
    const shop = aWorkshop();
    shop.set(fact('stage', stage.glue, { bulk: true, caution: 'Gloves.' }));
    expect(factOf(shop.shop.registers, { register: 'stage', id: stage.glue })).toMatchObject({
      kind: 'hold',
      bulk: true,
      caution: 'Gloves.',
      cureMinutes: 720,
    });
  });

  test.each([
    ['an accent typed as two characters', 'Prunier co\u0302te\u0301', 'Prunier c\u00f4t\u00e9'],
    ['blanks around it and within', '  black\t\n ash ', 'black ash'],
    ['marks that turn the direction of text', '\u202eash\u202c \u2066core\u2069', 'ash core'],
    ['control characters', 'a\u0000sh\u0007', 'a sh'],
    ['text from right to left', '\u05de\u05d9\u05dc\u05d4', '\u05de\u05d9\u05dc\u05d4'],
    ['emoji of several parts', 'Ash \u{1F468}\u200d\u{1F33E}', 'Ash \u{1F468}\u200d\u{1F33E}'],
    [
      'as many emoji as a name has room for',
      '\u{1F333}'.repeat(longestName),
      '\u{1F333}'.repeat(longestName),
    ],
  ])('keeps a name with %s as it reads', (_, typed, kept) => {
    const shop = aWorkshop();
    shop.set(ash(typed));
    expect(factOf(shop.shop.registers, { register: 'species', id: species.ash })?.name).toBe(kept);
  });

  test('keeps a caution as it reads', () => {
    const shop = aWorkshop();
    shop.set(fact('species', species.ash, { caution: ' Dust\u202e mask. ' }));
    expect(factOf(shop.shop.registers, { register: 'species', id: species.ash })?.caution).toBe('Dust mask.');
  });
});

describe('a name is refused', () => {
  test.each([
    ['that is empty', ''],
    ['of blanks', ' \t '],
    ['of unseen marks', '\u202e\u200f\u0007'],
    ['of joiners with nothing to join', '\u200d\u200b\ufe0f'],
  ])('%s', (_, name) => {
    expect(refusal(ash(name))).toEqual({ kind: 'text', problem: { kind: 'empty' } });
  });

  test('of 500 characters, and of one more than it has room for', () => {
    const tooLong = (length: number) => ({ kind: 'text', problem: { kind: 'too-long', length, most: 80 } });
    expect(refusal(ash('x'.repeat(500)))).toEqual(tooLong(500));
    expect(refusal(ash('\u{1F333}'.repeat(longestName + 1)))).toEqual(tooLong(81));
  });

  test.each(['plum', 'PLUM', '  Plum ', 'pl\u202eum'])('that reads like that of another wood: %j', (name) => {
    expect(refusal(ash(name))).toEqual({ kind: 'same-name' });
  });

  test('but may be that of a fact of another kind, of a wood that is used no more, or its own', () => {
    const shop = aWorkshop();
    shop.set(ash('Glue'));
    shop.set(ash('ash'));
    shop.set(fact('species', species.plum, { retired: true }));
    shop.set(ash('plum'));
    expect(shop.refusal({ kind: 'set', set: fact('species', species.plum) })).toEqual({ kind: 'same-name' });
    shop.set(fact('species', species.plum, { retired: true }));
  });
});

describe('a fact is refused', () => {
  test('for a variant without a wood', () => {
    const set = fact('variant', variant['ash-copper'], { species: 'yew' as SpeciesId });
    expect(refusal(set)).toEqual({ kind: 'no-wood' });
    expect(aShop().refusal({ kind: 'set', set: fact('variant', variant['ash-copper']) })).toEqual({
      kind: 'no-wood',
    });
  });

  test('with a caution that is too long', () => {
    expect(refusal(fact('species', species.ash, { caution: 'x'.repeat(longestNote + 1) }))).toEqual({
      kind: 'text',
      problem: { kind: 'too-long', length: 501, most: 500 },
    });
  });

  const glue = (change: object) => fact('stage', stage.glue, change);
  const bill = (each: number) =>
    fact('variant', variant['ash-copper'], { bill: [{ part: 'core' as never, each, stage: stage.glue }] });
  test.each([
    ['a cure of no time', glue({ cureMinutes: 0 }), { kind: 'too-small', least: 1 }],
    ['a cure of -3 minutes', glue({ cureMinutes: -3 }), { kind: 'too-small', least: 1 }],
    ['a cure of 1e9 minutes', glue({ cureMinutes: 1e9 }), { kind: 'too-large', most: 129_600 }],
    ['a cure of 2.5 minutes', glue({ cureMinutes: 2.5 }), { kind: 'not-whole' }],
    ['a cure that is no number', glue({ cureMinutes: Number.NaN }), { kind: 'not-a-number' }],
    ['no clamps', glue({ capacity: 0 }), { kind: 'too-small', least: 1 }],
    ['10,000 clamps', glue({ capacity: 10_000 }), { kind: 'too-large', most: 9999 }],
    ['more flaw buttons than six', glue({ reasons: Array(7).fill('gap') }), { kind: 'too-large', most: 6 }],
    ['none of a part', bill(0), { kind: 'too-small', least: 1 }],
    ['half a part', bill(0.5), { kind: 'not-whole' }],
    ['1000 of a part', bill(1000), { kind: 'too-large', most: 999 }],
    [
      'a price below nought',
      fact('variant', variant['ash-copper'], { firstPrice: -1 }),
      { kind: 'too-small', least: 0 },
    ],
    [
      'a price of half a penny',
      fact('variant', variant['ash-copper'], { firstPrice: 0.5 }),
      { kind: 'not-whole' },
    ],
    ['a day that begins at 13', fact('shop', 'shop', { dayStartHour: 13 }), { kind: 'too-large', most: 12 }],
    [
      '100,000 wanted',
      fact('batch', batch.spring, { wanted: [{ variant: variant['ash-copper'], good: 100_000 }] }),
      { kind: 'too-large', most: 99_999 },
    ],
  ])('with %s', (_, set, problem) => {
    expect(refusal(set)).toEqual({ kind: 'number', problem });
  });

  test('at once when it is nothing that a person could have typed', () => {
    expect(() => refusal(fact('species', species.ash, { light: 'beige' }))).toThrow('value.light');
  });
});

describe('a mark', () => {
  const at = Date.UTC(2026, 2, 2, 9);
  const noted = (change: Partial<MarkFact> = {}): RegisterSet => ({
    register: 'mark',
    id: mark['new-gouge'],
    value: {
      ...{ note: 'Re-ground the gouge', stage: stage.turn, species: null, at, answers: null, retired: false },
      ...change,
    },
  });

  test('is kept as it reads, may be changed and taken away, and stands beside another of the same note', () => {
    const shop = aWorkshop();
    const answers = { of: { kind: 'reason', reason: reason['tear-out'] }, since: at - 60_000 } as const;
    shop.set(noted({ note: ' Re-ground\u202e  the gouge ', answers }));
    shop.set({ ...noted(), id: mark['new-belt'] } as RegisterSet);
    const now = () => factOf(shop.shop.registers, { register: 'mark', id: mark['new-gouge'] });
    expect(now()).toEqual(noted({ answers }).value);
    expect(factsOf(shop.shop.registers, 'mark')).toHaveLength(2);
    shop.set(noted({ species: species.plum, retired: true }));
    expect(now()).toMatchObject({ species: species.plum, retired: true, answers: null });
  });

  test('changes no sum of the shop', () => {
    const shop = aWorkshop();
    shop.pass(shop.tray('ash-copper', 3), 'bore');
    const { seen: _, registers: __, ...before } = structuredClone(shop.shop);
    shop.set(noted());
    expect(shop.shop).toMatchObject(before);
  });

  test.each([
    ['says nothing', { note: ' \u200b ' }, { kind: 'no-note' }],
    [
      'says more than it has room for',
      { note: 'x'.repeat(201) },
      { kind: 'text', problem: { kind: 'too-long', length: 201, most: longestMarkNote } },
    ],
    ['is of no stage', { stage: 'mill' as StageId }, { kind: 'no-stage' }],
    ['is of a wood that there is not', { species: 'yew' as SpeciesId }, { kind: 'no-wood' }],
    ['was done in half a millisecond', { at: 0.5 }, { kind: 'number', problem: { kind: 'not-whole' } }],
  ])('is refused when it %s', (_, change, problem) => {
    expect(refusal(noted(change))).toEqual(problem);
  });

  test('is spoken of by its note', () => {
    const shop = aWorkshop();
    const [set] = shop.set(noted());
    const [away] = shop.set(noted({ retired: true }));
    const { registers } = shop.shop;
    expect(nameOf(registers, { register: 'mark', id: mark['new-gouge'] })).toBe('Re-ground the gouge');
    expect([set, away].map((event) => event && eventWords(event, registers))).toEqual([
      'Noted: Re-ground the gouge',
      'Note taken away: Re-ground the gouge',
    ]);
  });
});

describe('pieces are never left where no tap reaches them', () => {
  const stages = routeStages.filter((name) => name !== 'bore').map((name) => stage[name]);

  function withPieces() {
    const shop = aWorkshop();
    shop.tray('ash-copper', 3);
    return shop;
  }

  test('a route is not set over pieces that it leaves out', () => {
    const set = fact('route', route.haft, { stages });
    expect(withPieces().refusal({ kind: 'set', set })).toEqual({
      kind: 'stage-still-holds',
      stages: [{ stage: 'bore', pieces: 3, gone: true }],
    });
    aWorkshop().set(set);
  });

  test('a batch does not change to a route that lacks a stage where its pieces are', () => {
    const set = fact('batch', batch.spring, { route: route.short });
    const problem = { kind: 'stage-still-holds', stages: [{ stage: 'bore', pieces: 3 }] };
    expect(withPieces().refusal({ kind: 'set', set })).toEqual(problem);
    expect(
      withPieces().refusal({ kind: 'set', set: fact('batch', batch.spring, { route: 'new' as RouteId }) }),
    ).toEqual(problem);
    aWorkshop().set(set);
  });

  test('but other facts of a batch with pieces may change, and another batch its route', () => {
    const shop = withPieces();
    shop.set(fact('batch', batch.spring, { name: 'Spring fair', retired: true }));
    shop.set(fact('batch', batch.autumn, { route: route.haft }));
    expect(factOf(shop.shop.registers, { register: 'batch', id: 'autumn' as BatchId })?.route).toBe('haft');
  });

  test('a route without stages is none', () => {
    expect(refusal(fact('route', route.haft, { stages: [] }))).toEqual({ kind: 'route-is-empty' });
  });
});
