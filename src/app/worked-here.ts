import { effect, type ReadonlySignal, signal } from '@preact/signals';
import type { ShopEvent } from '../domain/log/event.ts';
import { longestStretch } from '../domain/shop/days.ts';
import type { Worked } from '../domain/wood/machine-rest.ts';
import type { Session } from './session.ts';

/** No machine is asked to run for longer at a stretch than this, with its rest (ms). */
const longestKept = 2 * 24 * 60 * 60_000;

const known = new WeakMap<object, ReadonlySignal<readonly Worked[]>>();

/**
 * The stretches of work that were tapped on this station, in ms of the wall clock: from the acts at hand when it is first
 * asked for, and every one since. A tap that was taken back was work of the machine all the same.
 */
export function workedHere(session: Pick<Session, 'acts'>): ReadonlySignal<readonly Worked[]> {
  const kept = known.get(session);
  if (kept) return kept;
  const worked = signal<readonly Worked[]>([]);
  let seen = 0;
  effect(() => {
    const events = session.acts.value.flatMap((act) => act.events).filter(({ seq }) => seq > seen);
    if (events.length === 0) return;
    seen = Math.max(...events.map(({ seq }) => seq));
    const all = [...worked.peek(), ...events.flatMap(stretchOf)];
    const since = (all.at(-1)?.to ?? 0) - longestKept;
    worked.value = all.filter(({ to }) => to >= since);
  });
  known.set(session, worked);
  return worked;
}

function stretchOf(event: ShopEvent): readonly Worked[] {
  if (!('elapsed' in event) || event.elapsed === null || event.elapsed > longestStretch) return [];
  const to = event.stamp.wall;
  return [{ stage: event.stage, from: to - event.elapsed, to }];
}
