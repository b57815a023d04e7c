import type { VersionVector } from '../domain/log/version-vector.ts';

/** How many events a version vector has seen. */
export function eventsSeen(seen: VersionVector): number {
  let sum = 0;
  for (const { upTo, extra } of seen.values()) sum += upTo + extra.size;
  return sum;
}
