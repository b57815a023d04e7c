import type { PartFact } from './facts.ts';

/**
 * Whether a part that was saved from scrap has to be cleaned before it can be used again. A shop that has not said so of a
 * part cleans what is metal and glued in: cores and ferrules. A part that the shop has no word on goes straight back.
 */
export function isCleaned(part: Pick<PartFact, 'sort' | 'cleaned'> | undefined): boolean {
  return part?.cleaned ?? (part?.sort === 'core' || part?.sort === 'ferrule');
}
