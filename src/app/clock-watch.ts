import { type ReadonlySignal, signal } from '@preact/signals';
import { type ClockDoubt, clockAtTap, doubtOfClock } from '../domain/log/clock-doubt.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import type { Clock } from './clock.ts';

/** Watches whether the tablet's clock can be believed. */
export interface ClockWatch {
  readonly doubt: ReadonlySignal<ClockDoubt | null>;
  /** Whether the doubt is still to be said: it is said until it is put away, and anew when the clock goes wrong again. */
  readonly unsaid: ReadonlySignal<boolean>;
  /** Compares the clock with all that is known. */
  readonly look: () => void;
  /** Takes in own events, the newest last. */
  readonly saw: (own: readonly ShopEvent[]) => void;
  readonly putAway: () => void;
  /** The maker says that the clock is right: what spoke against it counts no more. */
  readonly trust: () => void;
}

export function clockWatch({
  clock,
  built,
}: {
  clock: Pick<Clock, 'now' | 'monotonic'>;
  built: number;
}): ClockWatch {
  const doubt = signal<ClockDoubt | null>(null);
  const unsaid = signal(false);
  /** Both clocks at the last look without a doubt. Never the opening: nights of sleep would add up since then. */
  let sound: { readonly wall: number; readonly mono: number } | null = null;
  let lastTap: number | null = null;
  let overruled = Number.NEGATIVE_INFINITY;

  function look(): void {
    const at = { wall: clock.now(), mono: clock.monotonic() };
    const found = doubtOfClock({
      now: at.wall,
      built,
      lastTap: lastTap !== null && lastTap > overruled ? lastTap : null,
      since: sound && { wall: at.wall - sound.wall, mono: at.mono - sound.mono },
    });
    if (found === null) sound = at;
    if ((found === null) !== (doubt.value === null)) unsaid.value = found !== null;
    doubt.value = found;
  }

  return {
    doubt,
    unsaid,
    look,
    saw(own) {
      const last = own.findLast((event) => event.clock !== 'doubtful');
      if (last) lastTap = clockAtTap(last);
      // Where all are doubtful, a stamp still tells of the last right time: a clock that fell back did not take it along.
      else lastTap ??= own.at(0)?.stamp.wall ?? null;
    },
    putAway() {
      unsaid.value = false;
    },
    trust() {
      overruled = lastTap ?? overruled;
      sound = null;
      look();
    },
  };
}
