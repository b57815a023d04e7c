import type { LockDoor } from '../../app/bench-lock.ts';
import { systemClock } from '../../app/clock.ts';
import { pinMatches } from '../../app/pin-hash.ts';
import { useApp } from './app-context.ts';

/** The lock of this tablet, as what tries a PIN needs it. */
export function useLockDoor(): LockDoor {
  const { lock } = useApp().preferences;
  return { lock, now: systemClock.now, matches: pinMatches };
}
