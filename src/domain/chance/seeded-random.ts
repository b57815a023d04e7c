/** Uniform numbers from 0 (included) to 1 (not included). */
export type Random = () => number;

/** The same numbers for the same seed. Mulberry32 by Tommy Ettinger, released to the public domain; constants from memory. */
export function seededRandom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}
