import { effect, type Signal, signal } from '@preact/signals';
import * as v from 'valibot';
import { type BenchLock, keptLock } from './kept-lock.ts';
import type { LetterNews } from './station-letter.ts';

const schema = v.object({
  theme: v.fallback(v.picklist(['light', 'dark', 'glare']), 'light'),
  sound: v.fallback(v.boolean(), true),
  speak: v.fallback(v.boolean(), false),
  keys: v.fallback(v.boolean(), true),
  side: v.fallback(v.picklist(['left', 'right']), 'left'),
  person: v.fallback(v.nullable(v.string()), null),
  shop: v.fallback(v.picklist(['own', 'demo']), 'own'),
  lock: v.fallback(v.nullable(keptLock), null),
  pot: v.fallback(v.nullable(v.object({ stage: v.string(), ends: v.number() })), null),
  notify: v.fallback(v.boolean(), false),
  listing: v.fallback(v.nullable(v.array(v.string())), null),
  letterNews: v.fallback(v.nullable(v.object({ from: v.string(), to: v.string(), owner: v.string() })), null),
});

export type ShopChoice = 'own' | 'demo';

/** What this one tablet is set to; it may be lost without harm, so it is no part of the log. */
export interface Preferences {
  readonly theme: Signal<'light' | 'dark' | 'glare'>;
  readonly sound: Signal<boolean>;
  /** Whether the counts of the stage screen are spoken. */
  readonly speak: Signal<boolean>;
  /** Whether the stage screen answers to keys. */
  readonly keys: Signal<boolean>;
  /** Where the usual button of the stage screen stands; the other side is its mirror image, for the other hand. */
  readonly side: Signal<'left' | 'right'>;
  readonly person: Signal<string | null>;
  readonly shop: Signal<ShopChoice>;
  /** What keeps visitors to the bench; the same in all windows of the tablet. */
  readonly lock: Signal<BenchLock | null>;
  /** The columns of a listing sheet in the maker's order, as `listingColumnsOf` reads them; null until they were chosen. */
  readonly listing: Signal<readonly string[] | null>;
  /** That the station took another letter by itself, until the person has put it away. */
  readonly letterNews: Signal<LetterNews | null>;
  /** The mix that is being worked: of which stage, and when (ms UTC) its pot life is over. */
  readonly pot: Signal<{ readonly stage: string; readonly ends: number } | null>;
  /** Whether the system is told of cures that are over. */
  readonly notify: Signal<boolean>;
}

const place = 'tallywright preferences';

/** Preferences that are kept in `storage` as they change; storage that refuses or is missing is done without. */
export function openPreferences(storage: Pick<Storage, 'getItem' | 'setItem'> | undefined): Preferences {
  const kept = v.parse(schema, readJson(storage) ?? {});
  const preferences: Preferences = {
    theme: signal(kept.theme),
    sound: signal(kept.sound),
    speak: signal(kept.speak),
    keys: signal(kept.keys),
    side: signal(kept.side),
    person: signal(kept.person),
    shop: signal(kept.shop),
    lock: signal(kept.lock),
    listing: signal<readonly string[] | null>(kept.listing),
    letterNews: signal(kept.letterNews),
    pot: signal(kept.pot),
    notify: signal(kept.notify),
  };
  const { lock } = preferences;
  /** Takes the lock as another window left it. What cannot be read changes nothing: that would open it. */
  function follow(): void {
    const now = readJson(storage);
    if (!now) return;
    const theirs = v.parse(schema, now).lock;
    if (JSON.stringify(theirs) !== JSON.stringify(lock.peek())) lock.value = theirs;
  }
  globalThis.addEventListener?.('storage', (event) => event.key === place && follow());
  globalThis.addEventListener?.('hashchange', follow);
  let known = kept.lock;
  effect(() => {
    const now = Object.fromEntries(Object.entries(preferences).map(([name, { value }]) => [name, value]));
    // Something else has changed here: a window that slept must not write an older lock over that of another.
    if (lock.peek() === known) follow();
    known = lock.peek();
    try {
      storage?.setItem(place, JSON.stringify({ ...now, lock: known }));
    } catch {
      // A private window may refuse to keep anything: the choice then lasts as long as the window.
    }
  });
  return preferences;
}

function readJson(storage: Pick<Storage, 'getItem'> | undefined): object | undefined {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(place) ?? 'null');
    return typeof kept === 'object' && kept !== null ? kept : undefined;
  } catch {
    return undefined;
  }
}
