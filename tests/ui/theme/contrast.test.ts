/**
 * Levels: text 10:1 where it may stand on a bench screen, 7:1 elsewhere (also WCAG 2.2, SC 1.4.6, level AAA); edges and
 * marks 4.5:1 (SC 1.4.11 asks 3:1). The ten comes from NUREG-0700 rev. 3 (10:1 preferred, reflections included).
 */
import { describe, expect, test } from 'vitest';
import published from '../../../shared/check-values/touch-display.json';
import { themeNames } from '../../../src/ui/theme/theme-name.ts';
import { contrast } from './contrast.ts';
import { colour } from './tokens.ts';

const onBench: readonly (readonly [text: string, ground: string])[] = [
  ['ink', 'ground'],
  ['ink', 'paper'],
  ['ink', 'sunk'],
  ['ink', 'plate'],
  ['on-fill', 'fill-ink'],
  ['on-fill', 'fill-flaw'],
  ['on-fill', 'fill-saved'],
  // Stamped into the ferrules.
  ['fill-ink', 'copper-on-ink'],
  ['fill-flaw', 'on-fill'],
  // A held button: ink and paper change places.
  ['paper', 'ink'],
];

const elsewhere: readonly (readonly [text: string, ground: string])[] = [
  'ink-soft',
  'copper-text',
  'saved',
  'flaw',
  'warn',
].flatMap((text) => ['ground', 'paper', 'sunk'].map((ground) => [text, ground] as const));

const edges: readonly (readonly [edge: string, ground: string])[] = [
  'edge',
  'edge-soft',
  'copper',
  'saved',
  'flaw',
  'warn',
  'fill-ink',
  'fill-flaw',
  'fill-saved',
].flatMap((edge) => ['ground', 'paper', 'sunk'].map((ground) => [edge, ground] as const));

describe.each(themeNames)('in the %s theme', (theme) => {
  const measured = (one: string, other: string) => contrast(colour(theme, one), colour(theme, other));

  test.each(onBench)('%s on %s reads at the bench', (text, ground) => {
    expect(measured(text, ground)).toBeGreaterThanOrEqual(10);
  });

  test.each(elsewhere)('%s on %s reads at a desk', (text, ground) => {
    expect(measured(text, ground)).toBeGreaterThanOrEqual(7);
  });

  test.each(edges)('%s stands out from %s', (edge, ground) => {
    expect(measured(edge, ground)).toBeGreaterThanOrEqual(4.5);
  });

  test('the copper mark of the place in hand stands out from its ink', () => {
    expect(measured('copper-on-ink', 'fill-ink')).toBeGreaterThanOrEqual(4.5);
  });
});

describe('the formula', () => {
  const { pairs } = published.cases['contrast-basic'].inputs;
  const { ratio } = published.cases['contrast-basic'].expected;

  test.each(pairs.map(([one = '', other = ''], place) => [one, other, ratio[place] ?? 0] as const))(
    'gives the published ratio of %s on %s, %d',
    (one, other, expected) => {
      expect(Math.abs(contrast(one, other) - expected)).toBeLessThan(0.005);
    },
  );

  test('does not mind which of the two is the ground', () => {
    expect(contrast('#777777', '#ffffff')).toBe(contrast('#ffffff', '#777777'));
  });
});
