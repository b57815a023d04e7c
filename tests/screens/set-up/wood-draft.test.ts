import { expect, test } from 'vitest';
import { loadWoods } from '../../../src/app/wood-catalogue.ts';
import { readRegisterSets } from '../../../src/domain/set-up/register.ts';
import {
  findWoods,
  isInShop,
  ownWood,
  readWood,
  toneOf,
  woodOfCatalogue,
} from '../../../src/screens/set-up/wood-draft.ts';
import { grainTones } from '../../../src/ui/flow/grain-patterns.ts';
import { usualCaution } from '../../../src/words/wood-caution-words.ts';

const woods = await loadWoods();
const idsFound = (typed: string) => findWoods(woods, typed).map(({ id }) => id);

test('every wood of the reference data becomes a fact that the log keeps', () => {
  expect(woods).toHaveLength(59);
  const sets = woods.map((wood) => ({
    register: 'species',
    id: wood.id,
    value: { ...woodOfCatalogue(wood), retired: false },
  }));
  expect(readRegisterSets(sets)).toHaveLength(59);
});

test('a wood of the list is named with a capital, keeps its reference and brings its caution', () => {
  const ash = woods.find(({ id }) => id === 'ash-white');
  expect(ash && woodOfCatalogue(ash)).toMatchObject({
    name: 'White ash',
    reference: 'ash-white',
    grain: 'ring-porous',
    caution: usualCaution,
  });
});

test('a wood is found by parts of its common or botanical name, in any case, order and accent', () => {
  expect(idsFound('fagus')).toEqual(['beech-american', 'beech-european']);
  expect(idsFound('BEECH euro')).toEqual(['beech-european']);
  expect(idsFound('gonçalo')).toEqual(['goncalo-alves']);
  expect(idsFound('no such wood')).toEqual([]);
});

test('without a search the whole list stands there, by name', () => {
  expect(idsFound('  ')).toHaveLength(59);
  const names = findWoods(woods, '').map(({ common_name }) => common_name);
  expect(names).toEqual(names.toSorted((a, b) => a.localeCompare(b, 'en')));
});

test('a wood that the shop has is known by its reference, and by its name in any case', () => {
  const plum = woods.find(({ id }) => id === 'plum');
  if (!plum) throw new Error('no plum in the list');
  expect(isInShop(plum, [])).toBe(false);
  expect(isInShop(plum, [{ name: 'Garden plum', reference: 'plum' }])).toBe(true);
  expect(isInShop(plum, [{ name: ' PLUM', reference: null }])).toBe(true);
  expect(isInShop(plum, [{ name: 'Pear', reference: 'pear' }])).toBe(false);
});

test('a wood of one’s own needs a name; what was typed is left as it is', () => {
  expect(readWood(ownWood)).toEqual({ ok: false, problems: { name: 'Enter a name.', caution: undefined } });
  expect(readWood({ ...ownWood, name: ' \u200f ' })).toMatchObject({ ok: false });
});

test('a name of 500 characters and a caution of 501 are refused, each at its field', () => {
  expect(readWood({ ...ownWood, name: 'W'.repeat(500), caution: 'c'.repeat(501) })).toEqual({
    ok: false,
    problems: { name: '500 characters: at most 80 fit.', caution: '501 characters: at most 500 fit.' },
  });
});

test.each([
  ['עץ זית', 'עץ זית'],
  ['🌳🪵 burr', '🌳🪵 burr'],
  // A tree is two code units long, and one character as a person counts.
  ['🌳'.repeat(80), '🌳'.repeat(80)],
  ['  Old\u202e  olive\u0000 ', 'Old olive'],
])('the name “%s” is kept as “%s”', (typed, kept) => {
  const read = readWood({ ...ownWood, name: typed });
  expect(read.ok && read.value.name).toBe(kept);
});

test('ready colours are known again; others are the wood’s own', () => {
  expect(toneOf({ light: grainTones.red.ground, dark: grainTones.red.line })).toBe('red');
  expect(toneOf({ light: grainTones.red.ground, dark: grainTones.dark.line })).toBeUndefined();
});
