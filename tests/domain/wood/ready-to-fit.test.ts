import { expect, test } from 'vitest';
import { forgivenGap, readyToFit } from '../../../src/domain/wood/ready-to-fit.ts';

/** Sugar maple: Wood Handbook, table 4-3. */
const maple = { radial: 4.8, tangential: 9.9 };
const fit = { diameter: 1200, shrinkage: maple };

test('wood as dry as the room is ready, without a gap', () => {
  expect(readyToFit({ ...fit, from: 8, to: 8 })).toEqual({ kind: 'ready', gap: 0 });
});

test('wood a little wetter is ready with the small gap that a fit forgives', () => {
  const found = readyToFit({ ...fit, from: 9, to: 8 });
  // By hand: 1200 ÷ (3000/9.9 − 21).
  expect(found).toEqual({ kind: 'ready', gap: expect.closeTo(4.255, 3) });
});

test('wetter wood is not ready, and the gap is that of the direction that moves most', () => {
  const found = readyToFit({ ...fit, from: 14, to: 8 });
  expect(found).toEqual({ kind: 'too-wet', gap: expect.closeTo((1200 * 6) / (3000 / 9.9 - 16), 6) });
});

test('drier wood will grow in its ferrule', () => {
  const found = readyToFit({ ...fit, from: 5, to: 10 });
  expect(found).toEqual({ kind: 'too-dry', growth: expect.closeTo((1200 * 5) / (3000 / 9.9 - 25), 6) });
});

test('the edge of what is forgiven is still ready', () => {
  const gap = (1200 * 6) / (3000 / 9.9 - 16);
  expect(readyToFit({ ...fit, from: 14, to: 8, forgiven: gap }).kind).toBe('ready');
  expect(readyToFit({ ...fit, from: 14, to: 8, forgiven: gap - 1e-9 }).kind).toBe('too-wet');
  expect(forgivenGap).toBeGreaterThan(0);
});

test('a wood without shrinkage is not known, and a moisture that cannot be is a problem', () => {
  expect(readyToFit({ ...fit, shrinkage: { radial: null, tangential: 8 }, from: 14, to: 8 })).toEqual({
    kind: 'not-known',
  });
  expect(readyToFit({ ...fit, from: Number.NaN, to: 8 })).toEqual({ kind: 'out-of-range', which: 'from' });
});
