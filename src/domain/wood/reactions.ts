import type { Reaction, SpeciesFact } from '../set-up/facts.ts';

/** The latest of the maker's own reactions to a wood that was not withdrawn; null without one. */
export function standingReaction({ reactions = [] }: Pick<SpeciesFact, 'reactions'>): Reaction | null {
  return reactions.findLast(({ withdrawn }) => withdrawn === null) ?? null;
}
