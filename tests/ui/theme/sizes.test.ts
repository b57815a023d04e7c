import { describe, expect, test } from 'vitest';
import published from '../../../shared/check-values/touch-display.json';
import { px } from './tokens.ts';

/** One CSS pixel on a tablet of 160 to the inch, mm. */
const mm = 25.4 / 160;

/** Height of the capitals of Atkinson Hyperlegible Next and Mono, em (sCapHeight of both fonts). */
const capital = 0.668;

/** The height that fills an angle at a distance, mm. */
const heightOf = ({ arcMinutes, atMm }: { arcMinutes: number; atMm: number }): number =>
  atMm * Math.tan((arcMinutes / 60) * (Math.PI / 180));

describe('sizes of the bench', () => {
  test('its buttons are as large as keys for people who stand', () => {
    // Colle and Hiszem, Ergonomics 47 (2004) 1406: 20 mm suffice.
    expect(px('target-bench') * mm).toBeGreaterThanOrEqual(
      published.cases['touch-colle'].expected.sufficient_mm,
    );
  });

  test('its text fills 22 minutes of arc at 0.7 m', () => {
    // ISO 9241-3: 20 to 22 minutes preferred.
    expect(px('type-bench') * capital * mm).toBeGreaterThanOrEqual(heightOf({ arcMinutes: 22, atMm: 700 }));
  });

  test('codes and counts fill 20 minutes of arc at 2 m', () => {
    expect(px('type-code') * capital * mm).toBeGreaterThanOrEqual(heightOf({ arcMinutes: 20, atMm: 2000 }));
  });

  test.each([
    ['target-bench', 132, 400],
    ['target-bench-small', 96, 131],
    ['target', 56, 95],
    ['gap-bench', 24, 38],
    ['gap-apart', 96, 200],
    ['edge-dead', 40, 60],
    ['type-bench', 40, 60],
    ['type-bench-least', 30, 39],
    ['type-code', 105, 160],
    ['line', 3, 6],
  ])('--%s lies between %i and %i px', (name, least, most) => {
    expect(px(name)).toBeGreaterThanOrEqual(least);
    expect(px(name)).toBeLessThanOrEqual(most);
  });
});
