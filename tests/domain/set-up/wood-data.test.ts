import { expect, test } from 'vitest';
import { woods as demoWoods } from '../../../shared/demo/demo-facts.ts';
import woods from '../../../shared/species.json' with { type: 'json' };

test('every wood stands in the list once', () => {
  expect(new Set(woods.map(({ id }) => id)).size).toBe(woods.length);
});

test('every wood of the demo that names a reference stands in the list', () => {
  const ids = new Set(woods.map(({ id }) => id));
  const named = demoWoods.flatMap(({ reference }) => (reference === null ? [] : [reference]));
  expect(named).not.toEqual([]);
  expect(named.filter((reference) => !ids.has(reference))).toEqual([]);
});

test('a density or a shrinkage that is given names where it comes from and how that was confirmed', () => {
  for (const { id, specific_gravity: gravity, shrinkage_green_to_ovendry_pct: shrinkage } of woods) {
    for (const { source, confirmed, ...values } of [gravity, shrinkage]) {
      if (Object.values(values).every((value) => value === null)) continue;
      expect(source, id).toMatch(/\w/);
      expect(confirmed, id).toMatch(/\w/);
    }
  }
});

test('a hazard names where it comes from, and every wood says what is noted of its dust', () => {
  for (const { id, hazard, carcinogen_notation: notation } of woods) {
    if (hazard) expect(hazard.source, id).toMatch(/\w/);
    expect(notation.source, id).toMatch(/\w/);
  }
});

test('wood shrinks more along the rings than across them, and in volume by about the sum of both', () => {
  // The second is how the two directions add up, lengthwise shrinkage being slight; 4 of 100 allows for the rounding
  // of separate samples in the handbook's table.
  const known = woods.flatMap(({ id, shrinkage_green_to_ovendry_pct: { radial, tangential, volumetric } }) =>
    radial === null || tangential === null || volumetric === null
      ? []
      : [{ id, radial, tangential, volumetric }],
  );
  expect(known.length).toBeGreaterThan(20);
  for (const { id, radial, tangential, volumetric } of known) {
    expect(tangential, id).toBeGreaterThan(radial);
    expect(Math.abs(volumetric - radial - tangential), id).toBeLessThan(4);
  }
});

test('a specific gravity lies between that of balsa and of lignum vitae, and is greater dry than green', () => {
  // Bounds from memory: 0.1 and 1.3.
  for (const { id, specific_gravity: gravity } of woods) {
    const { green_or_basic: green, at_12_pct_mc: dry } = gravity;
    for (const value of [green, dry]) {
      if (value === null) continue;
      expect(value, id).toBeGreaterThan(0.1);
      expect(value, id).toBeLessThan(1.3);
    }
    if (green !== null && dry !== null) expect(dry, id).toBeGreaterThan(green);
  }
});
