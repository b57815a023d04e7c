import type { ShopEvent } from '../domain/log/event.ts';
import { pieces } from './number-words.ts';
import { shelfPlaceWords } from './shelf-place-words.ts';

/** Moves of several kinds of pieces to one place, in one sentence; undefined for one move, and for anything else. */
export function movesWords(events: readonly ShopEvent[]): string | undefined {
  const moves = events.filter((event) => event.kind === 'shelf-moved');
  const [first] = moves;
  if (!first || moves.length < 2 || moves.length < events.length) return undefined;
  if (moves.some(({ to }) => to !== first.to)) return undefined;
  const sum = moves.reduce((all, move) => all + move.pieces, 0);
  return `${pieces(sum)} of ${moves.length} kinds: now ${shelfPlaceWords[first.to].toLowerCase()}`;
}
