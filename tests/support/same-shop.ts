import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';
import type { Shop, Sums } from '../../src/domain/shop/shop.ts';

/** Expects two shops to be equal in everything: all sums, registers, voids and what was seen. */
export function expectSameShop(found: Shop, wanted: Shop): void {
  // The quick comparison first: the careful one is for the message.
  if (!isDeepStrictEqual(found, wanted)) expect(found).toEqual(wanted);
  expect(isDeepStrictEqual(found, wanted)).toBe(true);
}

/** The sums of a shop alone, without what it has seen and taken back. */
function sumsOf({ seen, voids, registers, ...sums }: Shop): Sums {
  return sums;
}

export function expectSameSums(found: Shop, wanted: Shop): void {
  const [a, b] = [sumsOf(found), sumsOf(wanted)];
  if (!isDeepStrictEqual(a, b)) expect(a).toEqual(b);
  expect(isDeepStrictEqual(a, b)).toBe(true);
}
