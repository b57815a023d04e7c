import { leastOf } from '../log/place.ts';
import type { Hold } from './holds.ts';

/** Of pieces in the order in which a tap takes them, those that may come out at `now` (ms UTC) without being asked about. */
export function mayComeOut(inOrder: readonly Hold[], now: number): number {
  const firstShort = inOrder.findIndex((hold) => leastOf(hold) > now);
  return piecesOf(firstShort < 0 ? inOrder : inOrder.slice(0, firstShort));
}

export function piecesOf(holding: readonly Hold[]): number {
  return holding.reduce((sum, { pieces }) => sum + pieces, 0);
}
