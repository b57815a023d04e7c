import { expect, test } from 'vitest';
import { cases } from '../../shared/check-values/wood.json' with { type: 'json' };
import { dustLimits } from '../../src/words/dust-words.ts';

test('the limits that are shown are the published ones (OSHA, NIOSH, ACGIH, EU, HSE)', () => {
  const { EU_hardwood_transitional_to_Jan_2023: past, ...published } = cases['wood-oel'].expected;
  expect(past).toBeGreaterThan(dustLimits.EU_hardwood_since.value);
  const shown = Object.fromEntries(Object.entries(dustLimits).map(([name, { value }]) => [name, value]));
  expect(shown).toEqual(published);
});
