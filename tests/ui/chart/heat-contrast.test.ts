/** Levels as in tests/ui/theme/contrast.test.ts: text at a desk 7:1; parts of a graphic 3:1 (WCAG 2.2, SC 1.4.11). */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { themeNames } from '../../../src/ui/theme/theme-name.ts';
import { contrast } from '../theme/contrast.ts';
import { colour } from '../theme/tokens.ts';

describe.each(themeNames)('in the %s theme', (theme) => {
  const sheet = readFileSync(new URL('../../../src/ui/chart/heat-table.css', import.meta.url), 'utf8');
  const parts = [...sheet.matchAll(/var\(--fill-flaw\) (\d+)%, var\(--paper\)/g)].map(([, part]) =>
    Number(part),
  );
  const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const mixed = (part: number): string => {
    const paper = channels(colour(theme, 'paper'));
    const heat = channels(colour(theme, 'fill-flaw'));
    const mix = heat.map((value, at) => Math.round((part * value + (100 - part) * (paper[at] ?? 0)) / 100));
    return `#${mix.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
  };

  test('words read on every heat, and the bar stands out from it', () => {
    expect(parts).toHaveLength(4);
    for (const part of parts) {
      expect(contrast(colour(theme, 'ink'), mixed(part))).toBeGreaterThanOrEqual(7);
      expect(contrast(colour(theme, 'fill-flaw'), mixed(part))).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(colour(theme, 'on-fill'), colour(theme, 'fill-flaw'))).toBeGreaterThanOrEqual(7);
  });
});
