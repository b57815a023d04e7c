import { describe, expect, test } from 'vitest';
import type { Reading } from '../../../src/domain/rollup/lot-moisture.ts';
import { readTenths } from '../../../src/screens/parts/form/tenths.ts';
import { fitsOf, lotVerdict } from '../../../src/screens/stores/wood-view.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { part } from '../../support/workshop.ts';

const walnut = { radial: 5.5, tangential: 7.8 };
const unknown = { radial: null, tangential: null };
const at = (percent: number) => ({ percent }) as Reading;
const air = { kind: 'known', percent: 8.5 } as const;
const asked = { reading: at(12.5), air, diameter: 1400, shrinkage: walnut };

describe('what is said of a lot', () => {
  test('names what is missing, one thing after the other', () => {
    expect(lotVerdict({ ...asked, reading: undefined })).toEqual({ kind: 'no-reading' });
    expect(lotVerdict({ ...asked, air: null })).toEqual({ kind: 'no-air' });
    expect(lotVerdict({ ...asked, air: { kind: 'out-of-range', which: 'celsius' } })).toEqual({
      kind: 'no-air',
    });
    expect(lotVerdict({ ...asked, diameter: null })).toEqual({ kind: 'no-diameter' });
  });

  test('is the gap that is to be expected, or that it is ready', () => {
    // By hand: 1400 × 4 ÷ (3000 ÷ 7.8 − 17.5).
    expect(lotVerdict(asked)).toEqual({ kind: 'too-wet', gap: expect.closeTo(15.254, 3) });
    expect(lotVerdict({ ...asked, reading: at(8.5) })).toEqual({ kind: 'ready', gap: 0 });
  });

  test('of a wood that the table has not is how much wetter or drier it is', () => {
    expect(lotVerdict({ ...asked, shrinkage: unknown })).toEqual({ kind: 'not-known', above: 4 });
    expect(lotVerdict({ ...asked, shrinkage: unknown, reading: at(6.5) })).toEqual({
      kind: 'not-known',
      above: -2,
    });
  });
});

test('parts that are fitted on one diameter are one choice', () => {
  const shop = aWorkshop();
  expect(fitsOf(shop.shop.registers)).toEqual([]);
  const ferrule = { sort: 'ferrule', retired: false } as const;
  shop.set({
    register: 'part',
    id: part['copper-ferrule'],
    value: { ...ferrule, name: 'Copper', fitDiameter: 1400 },
  });
  shop.set({
    register: 'part',
    id: part['nickel-ferrule'],
    value: { ...ferrule, name: 'Nickel', fitDiameter: 1400 },
  });
  shop.set({
    register: 'part',
    id: part.core,
    value: { name: 'Core', sort: 'core', retired: false, fitDiameter: 600 },
  });
  expect(fitsOf(shop.shop.registers)).toEqual([
    { diameter: 600, parts: ['Core'] },
    { diameter: 1400, parts: ['Copper', 'Nickel'] },
  ]);
});

test.each([
  ['12.4', 124],
  ['12,4', 124],
  [' 8 ', 80],
  ['8.', 80],
  ['0', 0],
  ['-0.5', null],
  ['12.45', null],
  ['1e2', null],
  ['wet', null],
  ['', null],
  ['200.1', null],
])('“%s” %% is %s tenths', (typed, tenths) => {
  expect(readTenths(typed, { least: 0, most: 2000 })).toBe(tenths);
});

test('a temperature may be below nought, with either sign for minus', () => {
  for (const typed of ['-5.5', '−5,5']) expect(readTenths(typed, { least: -500, most: 1500 })).toBe(-55);
});
