import { describe, expect, test } from 'vitest';
import { factOf } from '../../../src/domain/shop/registers.ts';
import {
  type BillLine,
  eachProblem,
  fittingStage,
  nameInForm,
  readVariant,
  type VariantDraft,
  variantDraftOf,
  withFerrule,
} from '../../../src/screens/set-up/variant-draft.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import { part, route, species, stage, variant } from '../../support/workshop.ts';

const workshop = aWorkshop();
for (const [id, name, sort] of [
  [part['copper-ferrule'], 'Copper ferrule', 'ferrule'],
  [part['nickel-ferrule'], 'Nickel silver ferrule', 'ferrule'],
  [part.core, 'Awl core', 'core'],
] as const) {
  workshop.set({ register: 'part', id, value: { name, sort, retired: false } });
}
const { registers } = workshop.shop;
const blank = variantDraftOf(undefined);
const read = (draft: Partial<VariantDraft>) => readVariant(registers, { ...blank, ...draft });
const line = (each: string): BillLine => ({ part: part.core, each, stage: stage.glue });

test('a variant that is read back from the shop is the same variant', () => {
  const fact = factOf(registers, { register: 'variant', id: variant['ash-copper'] });
  if (!fact) throw new Error('no such variant');
  const { retired, ...value } = fact;
  expect(readVariant(registers, variantDraftOf(fact))).toEqual({ ok: true, value });
});

describe('the name', () => {
  test('is proposed from wood and ferrule until one is typed', () => {
    const draft = { ...blank, species: species.ash, ferrule: part['copper-ferrule'] };
    expect(nameInForm(registers, blank)).toBe('');
    expect(nameInForm(registers, { ...blank, species: species.ash })).toBe('ash');
    expect(nameInForm(registers, draft)).toBe('ash, copper ferrule');
    expect(nameInForm(registers, { ...draft, name: 'Awl haft' })).toBe('Awl haft');
  });

  test('that was emptied stays empty and is asked for', () => {
    const result = read({ species: species.ash, name: '' });
    expect(result).toMatchObject({ ok: false, problems: { name: 'Enter a name.' } });
  });
});

test('a variant without a wood asks for the wood, and for nothing that follows from it', () => {
  expect(read({})).toMatchObject({ ok: false, problems: { species: 'Choose a wood', name: undefined } });
});

test('prices are read in minor units, and a wrong one is told at its own field', () => {
  const result = read({ species: species.ash, firstPrice: '32', secondPrice: '19,5' });
  expect(result).toMatchObject({ ok: true, value: { firstPrice: 3200, secondPrice: 1950 } });
  expect(read({ species: species.ash, firstPrice: '1e9', secondPrice: '' })).toMatchObject({
    ok: false,
    problems: { firstPrice: 'A price is a number such as 24 or 24.50.', secondPrice: undefined },
  });
});

test.each([
  ['0', 'At least 1.'],
  ['-3', 'At least 1.'],
  ['1e9', 'At most 999.'],
  ['2.5', 'Whole pieces only.'],
  ['', 'Enter a number.'],
  ['two', 'This is not a number.'],
])('“%s” of a part in a piece is refused: %s', (each, words) => {
  expect(eachProblem(line(each))).toBe(words);
  expect(read({ species: species.ash, bill: [line(each)] })).toMatchObject({
    ok: false,
    problems: { bill: expect.any(String) },
  });
});

describe('the ferrule', () => {
  const copper = part['copper-ferrule'];
  const nickel = part['nickel-ferrule'];

  test('goes on the bill when it is chosen, at the stage before the first cure', () => {
    expect(withFerrule(registers, blank, copper)).toEqual({
      ferrule: copper,
      bill: [{ part: copper, each: '1', stage: stage.bore }],
    });
  });

  test('takes over stage and number of the ferrule that it replaces', () => {
    const bill = [line('2'), { part: copper, each: '3', stage: stage.sand }];
    expect(withFerrule(registers, { ...blank, ferrule: copper, bill }, nickel)).toEqual({
      ferrule: nickel,
      bill: [line('2'), { part: nickel, each: '3', stage: stage.sand }],
    });
  });

  test('leaves the bill when there is to be none', () => {
    const bill = [line('2'), { part: copper, each: '1', stage: stage.sand }];
    expect(withFerrule(registers, { ...blank, ferrule: copper, bill }, null)).toEqual({
      ferrule: null,
      bill: [line('2')],
    });
  });

  test('that was on the bill already does not stand there twice', () => {
    const bill = [{ part: nickel, each: '1', stage: stage.turn }];
    expect(withFerrule(registers, { ...blank, bill }, nickel).bill).toHaveLength(1);
  });
});

test('where no stage comes before a cure, parts are fitted at the first stage of a route in use', () => {
  const shop = aWorkshop();
  const order = (id: typeof route.haft, name: string, stages: readonly (typeof stage.glue)[]) =>
    shop.act({ kind: 'change-route', route: id, name, stages, destinations: new Map() });
  order(route.haft, 'Haft', [stage.glue, stage.turn]);
  order(route.short, 'Short', [stage.sand, stage.turn]);
  // The autumn batch comes first by name, and goes the short route.
  expect(fittingStage(shop.shop.registers)).toBe(stage.sand);
  order(route.haft, 'Haft', [stage.bore, stage.turn, stage.glue]);
  expect(fittingStage(shop.shop.registers)).toBe(stage.turn);
  expect(fittingStage(aShop().shop.registers)).toBeUndefined();
});
