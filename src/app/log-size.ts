import type { VersionVector } from '../domain/log/version-vector.ts';
import type { Session } from './session.ts';

/** How many events a version vector has seen. */
export function eventsSeen(seen: VersionVector): number {
  let sum = 0;
  for (const { upTo, extra } of seen.values()) sum += upTo + extra.size;
  return sum;
}

/** How many entries the log of a session has, those that are not counted among them. */
export function logSize({ view }: Pick<Session, 'view'>): number {
  return eventsSeen(view.value.shop.seen) + view.value.uncounted;
}
