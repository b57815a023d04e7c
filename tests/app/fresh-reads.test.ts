import { expect, test } from 'vitest';
import { freshReads, type Seen } from '../../src/app/fresh-reads.ts';

test('a label is read once while it stays in the picture, and again when it was away', () => {
  let seen: Seen = new Map();
  const frame = (at: number, ...texts: string[]) => {
    const step = freshReads(seen, { texts, at });
    seen = step.seen;
    return step.fresh;
  };
  expect(frame(0, 'A')).toEqual(['A']);
  for (let at = 100; at < 5000; at += 100) expect(frame(at, 'A')).toEqual([]);
  // A blurred frame or two do not take it away.
  expect(frame(5400)).toEqual([]);
  expect(frame(5600, 'A', 'B', 'B')).toEqual(['B']);
  expect(frame(7200, 'A')).toEqual(['A']);
});
