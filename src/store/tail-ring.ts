import * as v from 'valibot';
import { emptyHolding, type Holding, holdingSchema } from '../domain/log/holding.ts';

/** What a ring keeps at most: lines, and characters of them. A browser gives a site some 5 million signs. */
const mostLines = 300;
const mostCharacters = 256_000;

export type SmallStorage = Pick<Storage, 'getItem' | 'setItem'>;

/** Lines that were added together, the how manieth of the ring they are, and what all amounted to with them. */
export interface RingPart {
  readonly number: number;
  readonly holding: Holding;
  readonly lines: readonly string[];
  /** How many times it was written again. */
  readonly again: number;
  /** Where it lies, and what lies there. */
  readonly key: string;
  readonly raw: string;
}

const count = v.pipe(v.number(), v.safeInteger());
const headSchema = v.object({ ...holdingSchema.entries, number: count, again: v.optional(count, 0) });

/**
 * The newest lines in the small storage of the browser, those of each tap under a key of their own: a tap is one short
 * write, and no crash parts its lines from each other or from the count of all.
 */
export function tailRing(storage: SmallStorage, name: string) {
  const keyOf = (number: number) => `${name} ${number % mostLines}`;
  let known: readonly RingPart[] | undefined;

  /** Other windows of the tablet write to the same ring: each of their writes goes to where the next line belongs. */
  function isKnown(parts: readonly RingPart[]): boolean {
    const newest = parts.at(-1);
    const next = keyOf((newest?.number ?? 0) + 1);
    const there = parts.find(({ key }) => key === next);
    return (
      (!newest || storage.getItem(newest.key) === newest.raw) &&
      (storage.getItem(next) ?? '') === (there?.raw ?? '')
    );
  }

  function read(): readonly RingPart[] {
    if (known && isKnown(known)) return known;
    const lost = new Map((known ?? []).map((part) => [part.key, part.raw]));
    const keys = Array.from({ length: mostLines }, (_, number) => keyOf(number));
    known = keys
      .flatMap((key) => {
        // What nobody has overwritten and is not there was taken away with the disk: this window knows it still.
        const raw = storage.getItem(key) ?? lost.get(key);
        return raw ? readPart(key, raw) : [];
      })
      .toSorted((a, b) => a.number - b.number);
    return known;
  }

  function put(key: string, raw: string): void {
    storage.setItem(key, raw);
    if (storage.getItem(key) !== raw) throw new Error('the storage keeps nothing');
  }

  const rawOf = ({ number, holding, lines, again }: Omit<RingPart, 'key' | 'raw'>) =>
    [JSON.stringify({ number, ...holding, ...(again > 0 && { again }) }), ...lines].join('\n');

  return {
    /** The oldest first. */
    parts: read,
    /**
     * Writes all of it again, each part a little different: a browser lets go what it could not write to a full disk, tells
     * nobody, shows it as there all the same, and writes again only what has changed.
     */
    freshen(): void {
      known = read().map((part) => {
        // What was changed stays as it is, to be looked at.
        if (part.number === 0) return part;
        const next = { ...part, again: part.again + 1 };
        const fresh = { ...next, raw: rawOf(next) };
        put(fresh.key, fresh.raw);
        return fresh;
      });
    },
    /** @param holding what all amount to with these lines */
    add(lines: readonly string[], holding: Holding): void {
      const before = read();
      const number = (before.at(-1)?.number ?? 0) + 1;
      const key = keyOf(number);
      const part = { number, holding, lines, again: 0 };
      const raw = rawOf(part);
      put(key, raw);
      const all = [...before.filter((old) => old.key !== key), { ...part, key, raw }];
      known = newest(all);
      for (const old of all.slice(0, all.length - known.length)) put(old.key, '');
    },
  };
}

/** A part whose head was changed counts as an old one. */
function readPart(key: string, raw: string): RingPart {
  const [head = '', ...lines] = raw.split('\n');
  try {
    const { number, again, ...holding } = v.parse(headSchema, JSON.parse(head));
    return { number, holding, lines, again, key, raw };
  } catch {
    return { number: 0, holding: emptyHolding, lines, again: 0, key, raw };
  }
}

/** The newest of these, as many as may be kept, and one at least. */
function newest(parts: readonly RingPart[]): readonly RingPart[] {
  let [from, count, characters] = [parts.length - 1, 0, 0];
  for (let at = from; at >= 0; at -= 1) {
    const { lines, raw } = parts[at] as RingPart;
    count += lines.length;
    characters += raw.length;
    if (count > mostLines || characters > mostCharacters) break;
    from = at;
  }
  return parts.slice(from);
}
