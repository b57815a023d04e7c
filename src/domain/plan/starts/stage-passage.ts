import type { Beta } from '../../statistics/beta-moments.ts';
import type { Expected, Outlook } from './outlook.ts';

/** What is expected of `pieces` that go into a stage, when `shift` others join those that come through. */
export type Passage = (pieces: number, next: Next) => Expected;

export interface Next {
  readonly outlook: Outlook;
  readonly shift: number;
}

/** A term below this share of the greatest is left out, where those beyond it only fall. */
const NEGLIGIBLE = 1e-22;

/**
 * Averages over how many of a number of pieces come through a stage, of which the rate is known as Beta(alpha, beta) and
 * the same for all of them: that number is beta-binomial.
 *
 * The terms follow from each other, from the likeliest on, and are divided by their sum; so nothing cancels, with a
 * history of any length. P(k + 1) ÷ P(k) = ((k + alpha) ÷ (k + 1)) · ((n − k) ÷ (n − k − 1 + beta)).
 */
export function stagePassage(rate: Beta): Passage {
  const terms = termsOf(rate);
  return (pieces, { outlook: { fewer, short, enough }, shift }) => {
    const { from, to, mass } = terms(pieces);
    const last = Math.min(to, enough - shift - 1);
    const expected = { fewer: 0, short: 0 };
    let whole = 0;
    for (let k = from; k <= to; k += 1) whole += mass[k] ?? 0;
    for (let k = from; k <= last; k += 1) {
      const arrived = Math.max(0, k + shift);
      const share = (mass[k] ?? 0) / whole;
      expected.fewer += share * (fewer[arrived] ?? 0);
      expected.short += share * (short[arrived] ?? 0);
    }
    return expected;
  };
}

/** The numbers that come through, from … to, and their masses up to a common factor. */
interface Terms {
  readonly from: number;
  readonly to: number;
  readonly mass: Float64Array;
}

function termsOf(rate: Beta): (pieces: number) => Terms {
  const { alpha, beta } = rate;
  const through: number[] = [];
  const lost: number[] = [];
  let mass = new Float64Array(64);
  return (pieces) => {
    if (pieces >= mass.length) mass = new Float64Array(2 * pieces);
    for (let k = through.length; k <= pieces; k += 1) {
      through.push((k + alpha) / (k + 1));
      lost.push((k + beta) / (k + 1));
    }
    const { start, floor } = likeliest(pieces, rate);
    mass[start] = 1;
    let [from, to] = [start, start];
    for (let term = 1; to < pieces && term > floor; to += 1) {
      term *= (through[to] ?? 0) / (lost[pieces - to - 1] ?? 1);
      mass[to + 1] = term;
    }
    for (let term = 1; from > 0 && term > floor; from -= 1) {
      term *= (lost[pieces - from] ?? 0) / (through[from - 1] ?? 1);
      mass[from - 1] = term;
    }
    return { from, to, mass };
  };
}

/** Where to begin, and below which share of the term there the others may be left out. */
function likeliest(
  pieces: number,
  { alpha, beta }: Beta,
): { readonly start: number; readonly floor: number } {
  const bend = alpha + beta - 2;
  // Otherwise the terms are highest at an end, perhaps at both.
  if (!(bend > 0)) return { start: alpha < beta ? 0 : pieces, floor: 0 };
  const top = Math.floor((pieces * (alpha - 1) + 1 - beta) / bend) + 1;
  return { start: Math.min(pieces, Math.max(0, top)), floor: NEGLIGIBLE };
}
