/** The log of a shop that has worked for years: the demo's two weeks over and over, each time with a batch and trays of its own. */
import { demoShop } from '../../shared/demo/demo-shop.ts';
import { type Entry, entryAfter, type Link, noLink } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import type { StationId } from '../../src/domain/log/ids.ts';
import { atStage } from '../../src/domain/log/place.ts';
import { mostInRun, packRun } from '../../src/domain/packed/pack-run.ts';
import type { PackedRun } from '../../src/domain/packed/packed-run.ts';
import { addEvent, emptyShop } from '../../src/domain/shop/shop.ts';

interface LongLogOptions {
  readonly events: number;
  /** The last fortnight ends here, ms UTC; of several, each ends two weeks before the next. */
  readonly until: number;
}

const dayMs = 86_400_000;
const fortnightMs = 14 * dayMs;

/** `events` events of two stations, in the order in which they were written; the same arguments give the same log. */
export function* longLog({ events, until }: LongLogOptions): Generator<ShopEvent> {
  const first = fortnight(until);
  // Facts of the shop are set once, at the beginning; a batch and its marks each time.
  const later = first.filter((event) => event.kind !== 'set-up' || isOfBatch(event.set));
  const fortnights = 1 + Math.ceil((events - first.length) / later.length);
  const numbers = new Map<StationId, number>();
  let written = 0;
  for (let round = 0; written < events; round += 1) {
    const told = round === 0 ? first : later;
    const before = new Map(numbers);
    const skipped = new Map(told.toReversed().map(({ station, seq }) => [station, seq - 1]));
    for (const event of told) {
      if (written === events) return;
      written += 1;
      const seq = (before.get(event.station) ?? 0) - (skipped.get(event.station) ?? 0);
      numbers.set(event.station, event.seq + seq);
      const by = { time: (round + 1 - fortnights) * fortnightMs, seq, name: round === 0 ? '' : `-${round}` };
      yield moved(event, by) as ShopEvent;
    }
  }
}

/** The demo's log, and what finishes the pieces that it leaves in work: there is never more in work than in a small shop. */
function fortnight(until: number): readonly ShopEvent[] {
  const log = demoShop({ now: until });
  const shop = emptyShop();
  for (const event of log) addEvent(shop, event);
  const last = log.findLast(({ kind }) => kind === 'passed');
  if (last?.kind !== 'passed') throw new Error('The demo ends without a pass.');
  let { seq } = log.findLast(({ station }) => station === last.station) ?? last;
  const finishing: ShopEvent[] = [];
  for (const [id, places] of shop.positions.working) {
    const record = shop.trays.get(id);
    if (!record) continue;
    const { made: _made, events: _events, ...of } = record;
    for (const { place, pieces, arrived } of places.values()) {
      if (!atStage(place) || pieces <= 0) continue;
      seq += 1;
      const to = { at: 'finished', grade: place.grade } as const;
      const since = Math.floor(arrived / pieces) * 1000;
      finishing.push({
        ...{ ...last, seq, of, stage: place.stage, pieces, parts: [] },
        stamp: { wall: until + finishing.length * 60_000, tick: 0 },
        moves: [{ tray: id, from: place, to, pieces, since }],
      });
    }
  }
  return [...log, ...finishing];
}

/** How far an event is moved: in time (ms) and in numbers; what is added to names of batches and trays. */
interface By {
  readonly time: number;
  readonly seq: number;
  readonly name: string;
}

const isOfBatch = ({ register }: { register: string }) => register === 'batch' || register === 'mark';
const later = (value: unknown, { time }: By) => (typeof value === 'number' ? value + time : value);
const renamed = (value: unknown, { name }: By) => `${value}${name}`;
const days = new Map<string, string>();
/** What becomes of a field of this name, wherever in an event it stands. */
const rules: Readonly<Record<string, (value: unknown, by: By) => unknown>> = {
  wall: later,
  since: later,
  at: later,
  ready: later,
  tray: renamed,
  batch: renamed,
  seq: (value, by) => Number(value) + by.seq,
  day(value, { time }) {
    const key = `${value} ${time}`;
    const day = days.get(key) ?? new Date(Date.parse(`${value}`) + time).toISOString().slice(0, 10);
    days.set(key, day);
    return day;
  },
  set: (value, by) => {
    const set = value as { register: string; id: string; value: unknown };
    return isOfBatch(set) ? { ...set, id: renamed(set.id, by), value: moved(set.value, by) } : set;
  },
};

function moved(value: unknown, by: By): unknown {
  if (Array.isArray(value)) return value.map((item) => moved(item, by));
  if (typeof value !== 'object' || value === null) return value;
  const copy: Record<string, unknown> = {};
  for (const [name, field] of Object.entries(value))
    copy[name] = rules[name]?.(field, by) ?? moved(field, by);
  return copy;
}

/** The same log in runs as long as can be, each as soon as it is full; those that are not full come last. */
export function* longRuns(options: LongLogOptions): Generator<PackedRun> {
  const open = new Map<StationId, { link: Link; entries: { entry: Entry }[] }>();
  for (const event of longLog(options)) {
    const run = open.get(event.station) ?? { link: noLink, entries: [] };
    open.set(event.station, run);
    const entry = entryAfter(run.link, event);
    run.link = entry.link;
    run.entries.push({ entry });
    if (run.entries.length < mostInRun) continue;
    yield packRun(run.entries);
    run.entries = [];
  }
  for (const { entries } of open.values()) if (entries.length > 0) yield packRun(entries);
}
