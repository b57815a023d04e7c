import * as v from 'valibot';
import { type StationId, stationId } from '../domain/log/ids.ts';

const count = v.pipe(v.number(), v.safeInteger(), v.minValue(0));
const schema = v.object({
  mark: v.fallback(v.nullable(v.object({ station: stationId, seq: count, entries: count })), null),
  suspect: v.fallback(v.boolean(), false),
});

/** How far a store had got: the own station's last number, and how many entries there were at the last comparison. */
interface Mark {
  readonly station: StationId;
  readonly seq: number;
  readonly entries: number;
}

/** The high-water mark of a store, kept outside of it. Storage that refuses or forgets is done without. */
export interface MarkKeeper {
  readonly read: () => Mark | null;
  readonly note: (mark: Mark) => void;
  /** Whether a failed write has left the store in doubt, and no later start has found it whole. */
  readonly isSuspect: () => boolean;
  readonly suspect: (isSo: boolean) => void;
}

/**
 * The mark of the store `name` in `storage`, which other windows write too: it is read anew each time, and what the
 * storage does not take is held here. A doubt of this window ends only here, or with it.
 */
export function markKeeper(
  storage: Pick<Storage, 'getItem' | 'setItem'> | undefined,
  name: string,
): MarkKeeper {
  const place = `${name} mark`;
  let unwritten: Partial<v.InferOutput<typeof schema>> = {};
  let doubted = false;
  const known = () => ({ ...v.parse(schema, readJson(storage, place)), ...unwritten });
  function write(next: typeof unwritten): void {
    unwritten = { ...unwritten, ...next };
    const text = JSON.stringify(known());
    try {
      storage?.setItem(place, text);
      if (storage?.getItem(place) === text) unwritten = {};
    } catch {
      // A full or refused storage: the mark is one witness of several.
    }
  }
  return {
    read: () => known().mark,
    note: (mark) => write({ mark }),
    isSuspect: () => doubted || known().suspect,
    suspect(isSo) {
      doubted = isSo;
      write({ suspect: isSo });
    },
  };
}

function readJson(storage: Pick<Storage, 'getItem'> | undefined, place: string): object {
  try {
    const kept: unknown = JSON.parse(storage?.getItem(place) ?? '{}');
    return typeof kept === 'object' && kept !== null ? kept : {};
  } catch {
    return {};
  }
}
