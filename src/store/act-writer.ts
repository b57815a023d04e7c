import * as v from 'valibot';
import type { Entry } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import type { StationId } from '../domain/log/ids.ts';
import { type EventRecord, recordOf } from './event-record.ts';
import { type Head, headSchema, numberAct } from './head.ts';
import { headNow } from './head-now.ts';
import type { Act } from './log-store.ts';
import { knownEntries } from './reading.ts';
import type { ShopDatabase } from './shop-schema.ts';

type Entries = readonly Entry<ShopEvent>[];

/** Behind the head that is known; behind the head as it is read; or so, and only if it is nowhere yet. */
type How = 'behind' | 'anew' | 'again';

/** Writes the acts of one window. */
export interface ActWriter {
  readonly station: () => StationId;
  /** Begins an act; what comes back writes it, and may be called again where a connection was lost. */
  readonly begin: (act: Act) => (db: ShopDatabase) => Promise<Entries>;
  /** A merge has brought the store to this head. */
  readonly goOnBehind: (head: Head) => void;
}

/** So many acts are remembered by their names: one that comes again may be stored already. */
const mostRemembered = 5000;
/** After a longer pause (ms) the head is read again: other windows may have gone on. */
const longestTrust = 10 * 60_000;
const strict = { durability: 'strict' } as const;

/**
 * Mostly a tap goes behind the head that this window has itself left, with nothing to wait for. When another window was
 * quicker, after a pause, and for an act that was given before, the head is read in the same transaction.
 */
export function actWriter(opened: Head): ActWriter {
  const given = new Set<string>();
  let head = opened;
  /** When this window last wrote, by the tablet's clock (ms); undefined when the head must be read. */
  let wrote: number | undefined;
  /** Entries of the head that is kept, when it was last seen: merges change them. */
  let merged: number | undefined;

  function isFirst({ act, tried }: Act): boolean {
    const isNew = !tried && !given.has(act);
    given.add(act);
    const [oldest] = given;
    if (given.size > mostRemembered && oldest !== undefined) given.delete(oldest);
    return isNew;
  }

  async function write(db: ShopDatabase, { act, how }: { act: Act; how: How }): Promise<Entries> {
    const quick = how === 'behind' ? await appendBehind(db, { head, act }) : notYet;
    const { kind, ...done } =
      quick.kind === 'done' ? quick : await append(db, { act, how, instead: quick.misplaced });
    // Where another window has merged something, the next tap hears of it.
    wrote = quick.kind === 'done' && done.merged !== merged ? undefined : act.now;
    merged = done.merged;
    head = done.head;
    return done.entries;
  }

  return {
    station: () => head.station,
    begin(act) {
      const pause = act.now - (wrote ?? Number.NEGATIVE_INFINITY);
      let how: How = 'again';
      if (isFirst(act)) how = pause >= 0 && pause < longestTrust ? 'behind' : 'anew';
      return (db) => {
        const now = how;
        how = 'again';
        wrote = undefined;
        return write(db, { act, how: now });
      };
    },
    goOnBehind(next) {
      head = next;
      wrote = undefined;
    },
  };
}

interface Done {
  readonly kind: 'done';
  readonly entries: Entries;
  readonly head: Head;
  /** Entries of the head that is kept. */
  readonly merged: number;
}
/** Nothing is stored, or only what must go again because its numbers were given before. */
interface NotYet {
  readonly kind: 'not-yet';
  readonly misplaced: readonly EventRecord[];
}
const notYet: NotYet = { kind: 'not-yet', misplaced: [] };

async function appendBehind(
  db: ShopDatabase,
  { head, act }: { head: Head; act: Act },
): Promise<Done | NotYet> {
  const tx = db.transaction(['events', 'heads'], 'readwrite', strict);
  const held = tx.objectStore('heads').get('head');
  // Numbered and summed up while the browser opens the transaction.
  const numbered = numberAct(head, act);
  const records = numbered.entries.map((entry) => recordOf(entry, { act: act.act }));
  const written = Promise.all([
    held,
    ...records.map((record) => tx.objectStore('events').add(record)),
    tx.done,
  ]);
  // Nothing more is coming: without a word the browser waits to hear.
  tx.commit();
  try {
    const [kept] = await written;
    const { station, seq, holding } = v.parse(headSchema, kept);
    // Another window took a new station, or wrote on so far that these numbers are sealed already.
    if (station !== head.station || seq > head.seq) return { kind: 'not-yet', misplaced: records };
    return { kind: 'done', ...numbered, merged: holding.entries };
  } catch (error) {
    if (error instanceof DOMException && error.name === 'ConstraintError') return notYet;
    throw error;
  }
}

/** Adds an act behind whatever is there, unless it is there itself. */
async function append(
  db: ShopDatabase,
  { act, how, instead }: { act: Act; how: How; instead: readonly EventRecord[] },
): Promise<Done> {
  // Fetched before the transaction begins: one that has nothing to do commits.
  const lookup = how === 'again' ? await import('./sealed-act.ts') : undefined;
  const stores = lookup ? (['events', 'heads', 'runs', 'packs'] as const) : (['events', 'heads'] as const);
  const tx = db.transaction([...stores], 'readwrite', strict);
  const events = tx.objectStore('events');
  await Promise.all(instead.map(({ station, seq }) => events.delete([station, seq])));
  const [head, young] = await Promise.all([headNow(tx), events.index('byAct').getAll(act.act)]);
  const earlier = young.length > 0 ? knownEntries(young) : ((await lookup?.sealedAct(tx, act)) ?? []);
  if (earlier.length > 0) return { kind: 'done', head, entries: earlier, merged: head.holding.entries };
  const numbered = numberAct(head, act);
  await Promise.all([
    ...numbered.entries.map((entry) => events.add(recordOf(entry, { act: act.act }))),
    tx.objectStore('heads').put(numbered.head, 'head'),
    tx.done,
  ]);
  return { kind: 'done', ...numbered, merged: numbered.head.holding.entries };
}
