/** Levels as in tests/ui/theme/contrast.test.ts: text at a desk 7:1; parts of a graphic 3:1 (WCAG 2.2, SC 1.4.11). */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { themeNames } from '../../../src/ui/theme/theme-name.ts';
import { contrast } from '../theme/contrast.ts';
import { colour } from '../theme/tokens.ts';

const fulls = ['fill-flaw', 'fill-ink'] as const;
const cases = themeNames.flatMap((theme) => fulls.map((full) => ({ theme, full })));

describe.each(cases)('in the $theme theme, hot to $full', ({ theme, full }) => {
  const sheet = readFileSync(new URL('../../../src/ui/chart/heat-table.css', import.meta.url), 'utf8');
  const parts = [...sheet.matchAll(/var\(--heat-full\) (\d+)%, var\(--paper\)/g)].map(([, part]) =>
    Number(part),
  );
  const channels = (hex: string) => [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  const mixed = (part: number): string => {
    const paper = channels(colour(theme, 'paper'));
    const heat = channels(colour(theme, full));
    const mix = heat.map((value, at) => Math.round((part * value + (100 - part) * (paper[at] ?? 0)) / 100));
    return `#${mix.map((value) => value.toString(16).padStart(2, '0')).join('')}`;
  };

  test('words read on every heat, and the bar stands out from it', () => {
    expect(sheet).toContain(`--heat-full: var(--${full})`);
    expect(parts).toHaveLength(4);
    for (const part of parts) {
      expect(contrast(colour(theme, 'ink'), mixed(part))).toBeGreaterThanOrEqual(7);
      expect(contrast(colour(theme, full), mixed(part))).toBeGreaterThanOrEqual(3);
    }
    expect(contrast(colour(theme, 'on-fill'), colour(theme, full))).toBeGreaterThanOrEqual(7);
  });
});
