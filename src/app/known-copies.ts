import { type ReadonlySignal, signal } from '@preact/signals';
import * as v from 'valibot';
import { shopDayText } from '../domain/log/ids.ts';

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const mark = { at: v.number(), day: shopDayText, log: count };

const schema = v.object({
  /** The last good copy on the tablet, with how many entries it has. */
  kept: v.fallback(v.nullable(v.object({ ...mark, entries: count })), null),
  /** Why the last try made no copy: it would have lost entries that the older one has, or it could not be written. */
  trouble: v.fallback(v.nullable(v.object({ ...mark, kind: v.picklist(['guarded', 'failed']) })), null),
  /** The last copy that left the tablet, as far as the app can know. */
  outside: v.fallback(
    v.nullable(
      v.object({ ...mark, entries: count, way: v.picklist(['folder', 'download', 'share', 'text']) }),
    ),
    null,
  ),
});

/** What this tablet remembers of the copies of one shop. It may be lost: a copy is then made once too often. */
export type KnownCopies = Readonly<v.InferOutput<typeof schema>>;
export type OutsideCopy = NonNullable<KnownCopies['outside']>;
export type OutsideWay = OutsideCopy['way'];

export interface CopyMemory {
  readonly known: ReadonlySignal<KnownCopies>;
  readonly note: (change: Partial<KnownCopies>) => void;
  readonly close: () => void;
}

type Place = Pick<Storage, 'getItem' | 'setItem'>;

/** Remembers the copies of the store `name` in `storage`, together with the other windows of the tablet. */
export function rememberCopies(name: string, storage: Place | undefined): CopyMemory {
  const key = `tallywright copies of ${name}`;
  const known = signal(readKnown(storage, key));
  const reread = (event: StorageEvent) => {
    if (event.key === key) known.value = readKnown(storage, key);
  };
  globalThis.addEventListener?.('storage', reread);
  return {
    known,
    note(change) {
      // Another window may have noted something else in between.
      known.value = { ...known.value, ...readKnown(storage, key, known.value), ...change };
      try {
        storage?.setItem(key, JSON.stringify(known.value));
      } catch {
        // Storage that refuses is done without: what is known lasts as long as the window.
      }
    },
    close: () => globalThis.removeEventListener?.('storage', reread),
  };
}

const nothingKnown: KnownCopies = { kept: null, trouble: null, outside: null };

function readKnown(storage: Place | undefined, key: string, otherwise = nothingKnown): KnownCopies {
  try {
    const text = storage?.getItem(key);
    if (!text) return otherwise;
    const read = v.safeParse(schema, JSON.parse(text));
    return read.success ? read.output : otherwise;
  } catch {
    return otherwise;
  }
}
