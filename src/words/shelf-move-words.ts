import type { ShopEvent } from '../domain/log/event.ts';
import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';
import { shelfPlaceInSentence } from './shelf-place-words.ts';

export const shelfMoveWords = inLanguage('shelfMoveWords', {
  several: (n: number, kinds: number, place: string) => `${pieces(n)} of ${kinds} kinds: now ${place}`,
});

/** Moves of several kinds of pieces to one place, in one sentence; undefined for one move, and for anything else. */
export function movesWords(events: readonly ShopEvent[]): string | undefined {
  const moves = events.filter((event) => event.kind === 'shelf-moved');
  const [first] = moves;
  if (!first || moves.length < 2 || moves.length < events.length) return undefined;
  if (moves.some(({ to }) => to !== first.to)) return undefined;
  const sum = moves.reduce((all, move) => all + move.pieces, 0);
  return shelfMoveWords.several(sum, moves.length, shelfPlaceInSentence[first.to]);
}
