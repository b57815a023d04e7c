import type { Random } from '../domain/chance/seeded-random.ts';

const [shortest, longest] = [1000, 60_000];

/** How long to wait (ms) before the next of some tries in vain: twice as long each time, and up to half of it left to chance. */
export function backOff(tries: number, random: Random): number {
  return Math.min(longest, shortest * 2 ** Math.min(tries, 10)) * (1 - random() / 2);
}
