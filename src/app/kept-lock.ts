import * as v from 'valibot';

/** PBKDF2-HMAC-SHA-256 as a text in the manner of the PHC string format: rounds, salt of 16 bytes, hash of 32, in hex. */
const hashed = v.pipe(v.string(), v.regex(/^\$pbkdf2-sha256\$i=\d{1,7}\$[0-9a-f]{32}\$[0-9a-f]{64}$/));

/** The lock of a tablet: kept in its preferences, and nowhere else. */
export const keptLock = v.object({
  pin: hashed,
  /** Opens when the PIN is forgotten, and takes the lock away. */
  recovery: hashed,
  /** Minutes without a touch after which it closes by itself; null is never. */
  minutes: v.nullable(v.number()),
  locked: v.boolean(),
  /** Tries in vain since the last right one, and when the latest was (ms UTC). */
  wrong: v.number(),
  triedAt: v.number(),
  /** The latest touch that was noted, ms UTC. */
  touchedAt: v.number(),
});

export type BenchLock = Readonly<v.InferOutput<typeof keptLock>>;

export const minute = 60_000;

/** Whether nobody has touched the tablet for so long that it is to lock by itself. */
export function isIdle({ minutes, touchedAt }: BenchLock, now: number): boolean {
  return minutes !== null && now - touchedAt >= minutes * minute;
}

/** Whether only the bench can be reached: locked, or due to lock by itself. */
export function isClosed(lock: BenchLock | null, now: number): boolean {
  return lock !== null && (lock.locked || isIdle(lock, now));
}
