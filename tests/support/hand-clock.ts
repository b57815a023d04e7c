import type { Clock } from '../../src/app/clock.ts';
import type { Timer } from '../../src/app/saver.ts';

/** A clock and a timer that a test moves by hand. */
export function handClock(start = Date.UTC(2026, 2, 2, 9)) {
  let wall = start;
  let mono = 1000;
  const waiting = new Set<{ readonly at: number; readonly run: () => void }>();
  const clock: Clock = { now: () => wall, monotonic: () => mono, zone: () => 'Europe/London' };
  const timer: Timer = {
    after(ms, run) {
      const entry = { at: mono + ms, run };
      waiting.add(entry);
      return () => waiting.delete(entry);
    },
  };
  return {
    clock,
    timer,
    pass(ms: number) {
      wall += ms;
      mono += ms;
      for (const entry of [...waiting]) {
        if (entry.at > mono) continue;
        waiting.delete(entry);
        entry.run();
      }
    },
    /** Sets the wall clock alone, as a person or a network may. */
    setWall(ms: number) {
      wall = ms;
    },
  };
}
