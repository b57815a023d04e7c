import { effect, type Signal, signal } from '@preact/signals';
import * as v from 'valibot';

const schema = v.object({
  theme: v.fallback(v.picklist(['light', 'dark', 'glare']), 'light'),
  sound: v.fallback(v.boolean(), true),
  keys: v.fallback(v.boolean(), true),
  person: v.fallback(v.nullable(v.string()), null),
  shop: v.fallback(v.picklist(['own', 'demo']), 'own'),
});

export type ShopChoice = 'own' | 'demo';

/** What this one tablet is set to; it may be lost without harm, so it is no part of the log. */
export interface Preferences {
  readonly theme: Signal<'light' | 'dark' | 'glare'>;
  readonly sound: Signal<boolean>;
  /** Whether the stage screen answers to keys. */
  readonly keys: Signal<boolean>;
  readonly person: Signal<string | null>;
  readonly shop: Signal<ShopChoice>;
}

const place = 'tallywright preferences';

/** Preferences that are kept in `storage` as they change; storage that refuses or is missing is done without. */
export function openPreferences(storage: Pick<Storage, 'getItem' | 'setItem'> | undefined): Preferences {
  const kept = v.parse(schema, readJson(storage));
  const preferences: Preferences = {
    theme: signal(kept.theme),
    sound: signal(kept.sound),
    keys: signal(kept.keys),
    person: signal(kept.person),
    shop: signal(kept.shop),
  };
  effect(() => {
    const now = Object.fromEntries(Object.entries(preferences).map(([name, { value }]) => [name, value]));
    try {
      storage?.setItem(place, JSON.stringify(now));
    } catch {
      // A private window may refuse to keep anything: the choice then lasts as long as the window.
    }
  });
  return preferences;
}

function readJson(storage: Pick<Storage, 'getItem'> | undefined): object {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(place) ?? '{}');
    return typeof kept === 'object' && kept !== null ? kept : {};
  } catch {
    return {};
  }
}
