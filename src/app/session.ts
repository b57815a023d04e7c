import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Command } from '../domain/command/command.ts';
import { type Circumstances, envelopeAt } from '../domain/command/decision.ts';
import type { Problem } from '../domain/command/problem.ts';
import type { Entry } from '../domain/log/chain.ts';
import type { Draft, ShopEvent } from '../domain/log/event.ts';
import type { PersonId, ShopDay, StageId, StationId } from '../domain/log/ids.ts';
import type { LogEvent } from '../domain/log/read-event.ts';
import { isZoneName, shopDay, usualDayStart, zoneAt } from '../domain/log/zone.ts';
import type { ShopFact } from '../domain/set-up/facts.ts';
import { factOf } from '../domain/shop/registers.ts';
import type { Shop } from '../domain/shop/shop.ts';
import type { Subject } from '../store/event-record.ts';
import type { Feed } from '../store/feed.ts';
import type { LogStore, ReadParcel } from '../store/log-store.ts';
import { inForce, lastPutBack, lastUndoable, type RecentAct, withEvents } from './acts.ts';
import type { BooksReport } from './books.ts';
import type { Clock } from './clock.ts';
import { type ClockWatch, clockWatch } from './clock-watch.ts';
import { judge, judgeAhead, type LoadDecide } from './judge.ts';
import { openKeptShop } from './kept-shop.ts';
import { noNet, type SafetyNet, type Saver, saver, type Timer } from './saver.ts';
import type { Restored } from './session-errands.ts';
import { afterUndo, enterStage, type Spell, spellOf } from './spell.ts';

export type ActResult =
  | { readonly kind: 'saved'; readonly events: readonly ShopEvent[] }
  | { readonly kind: 'refused'; readonly problem: Problem };

/** A view of the shop. The sums behind it change in place: read it inside a signal and keep no part of it. */
interface ShopView {
  readonly shop: Shop;
  /** Events of a newer version or damaged ones, which are kept and not counted. */
  readonly uncounted: number;
}

/** The one door between screens and shop: commands go in, signals come out. */
export interface Session {
  readonly view: ReadonlySignal<ShopView>;
  /** False for a moment after the start: trays that are done with and earlier days are not read yet. */
  readonly isWhole: ReadonlySignal<boolean>;
  readonly acts: ReadonlySignal<readonly RecentAct[]>;
  readonly saving: Saver['saving'];
  readonly person: Signal<PersonId | null>;
  readonly spell: ReadonlySignal<Spell | null>;
  readonly station: StationId;
  /** The shop day and moment of now, and the zone in which the shop counts its days. */
  readonly today: () => ShopDay;
  readonly now: () => number;
  readonly zone: () => string;
  readonly clockWatch: Pick<ClockWatch, 'doubt' | 'unsaid' | 'putAway' | 'trust'>;
  readonly newId: () => string;
  readonly act: (command: Command) => Promise<ActResult>;
  readonly retry: () => void;
  /** Takes back the latest act that still counts; a second call takes back the one before. */
  readonly undoLast: () => Promise<ActResult>;
  /** Takes back the latest undo. */
  readonly putBack: () => Promise<ActResult>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canPutBack: ReadonlySignal<boolean>;
  readonly enterStage: (stage: StageId) => void;
  readonly pause: () => Promise<void>;
  /** Every event about a tray or something of the stores, in the order of their stamps. */
  readonly historyOf: (subject: Subject) => Promise<readonly ShopEvent[]>;
  /** Every event of the log, those of a newer version among them. Rejects when the store cannot be read. */
  readonly allEvents: () => Promise<readonly LogEvent[]>;
  /** Every entry that the store can still read, one line of JSON each; empty when it can read none. */
  readonly exportLines: () => Promise<readonly string[]>;
  /** Reads what other windows have written. */
  readonly refresh: () => Promise<void>;
  readonly keepSnapshot: () => Promise<void>;
  /** Keeps a snapshot of sums that were added up anew. */
  readonly keepSnapshotOf: (rebuilt: Shop) => Promise<void>;
  /** The whole log as its stations wrote it. Rejects when it cannot be read. */
  readonly entries: () => Promise<readonly Entry[]>;
  /** Adds what a copy holds by its identity, in one merge; what is there stays as it is. */
  readonly restore: (parcel: ReadParcel) => Promise<Restored>;
  /** Adds the whole log up anew and compares it with what is shown, between two taps. Rejects when it cannot be read. */
  readonly checkBooks: () => Promise<BooksReport>;
  readonly close: () => Promise<void>;
}

export interface SessionParts {
  readonly log: LogStore;
  readonly clock: Clock;
  /** When this version was built, ms UTC. */
  readonly built: number;
  readonly timer: Timer;
  readonly newId: () => string;
  readonly feed: Feed;
  /** Fetches the decisions that the first screen does not carry; for tests. */
  readonly loadDecide?: LoadDecide | undefined;
  /** The store may be looked at and not written to. */
  readonly onlyLooking?: boolean | undefined;
  /** Beside the store, for taps that it does not take at once. */
  readonly net?: SafetyNet | undefined;
  /** The store took a new station: the shop is to be opened anew. */
  readonly onNewStation?: (() => void) | undefined;
  /** Entries came in from a copy: an empty shop may have become one. */
  readonly afterRestore?: ((session: Session) => Promise<void>) | undefined;
}

const errands = () => import('./session-errands.ts');

const refusedToLook: ActResult = { kind: 'refused', problem: { kind: 'only-looking' } };
const nothingLeft: ActResult = { kind: 'refused', problem: { kind: 'already-taken-back' } };

/** What is judged by trays in work and set-up facts alone; all else waits until the whole shop is read. */
const withoutPages: ReadonlySet<Command['kind']> = new Set([
  'pass',
  'flaw',
  'load',
  'set',
  'begin-spell',
  'end-spell',
]);
/** The first screen has its time before the rest of the shop is read (ms). */
const untilPages = 400;

/** Acts between two snapshots: an opening replays at most so many. */
const snapshotEvery = 200;

/** Opens the shop of a log. Rejects when the log cannot be read: that is not an empty shop. */
export async function openSession(parts: SessionParts): Promise<Session> {
  const { log, clock, built, timer, newId, feed, net = noNet, onNewStation = () => {} } = parts;
  const kept = await openKeptShop(log);
  const { shop } = kept;
  const view = signal<ShopView>({ shop, uncounted: 0 });
  const latest = (await log.latestOwn(200)).events;
  const acts = signal<readonly RecentAct[]>(withEvents([], latest));
  const watch = clockWatch({ clock, built });
  watch.saw(latest);
  const spell = signal<Spell | null>(null);
  const person = signal<PersonId | null>(null);
  const keeper = saver({ log, timer, net });
  const own = log.station();
  let sinceSnapshot = 0;
  let queue: Promise<unknown> = Promise.resolve();

  function take(events: readonly ShopEvent[], uncounted = view.value.uncounted): void {
    const fresh = kept.take(events);
    sinceSnapshot += fresh.length;
    const mine = fresh.filter(({ station }) => station === own);
    if (mine.length > 0) acts.value = withEvents(acts.value, mine);
    watch.saw(mine);
    view.value = { shop, uncounted };
  }

  async function refresh(): Promise<void> {
    watch.look();
    await kept.whole();
    const { events, newer, damaged } = await log.since(shop.seen);
    take(events, newer.length + damaged.length);
  }

  async function open(): Promise<void> {
    const { events, newer, damaged } = await log.since(shop.seen);
    kept.take(events);
    sinceSnapshot = events.length;
    view.value = { shop, uncounted: newer.length + damaged.length };
  }

  /** A zone that a newer browser named may be unknown to this one: the tablet's own then stands in. */
  function zoneOf(fact: ShopFact | undefined): string {
    return fact && isZoneName(fact.zone) ? fact.zone : clock.zone();
  }

  function circumstances(elapsed: number | null): Circumstances {
    const now = clock.now();
    const fact = factOf(shop.registers, { register: 'shop', id: 'shop' });
    const zone = zoneOf(fact);
    const letter = factOf(shop.registers, { register: 'station', id: own })?.letter ?? null;
    const day = shopDay(now, { zone, startHour: fact?.dayStartHour ?? usualDayStart });
    return {
      now,
      zone: zoneAt(now, zone),
      day,
      clock: watch.doubt.value === null ? 'sound' : 'doubtful',
      person: person.value,
      station: own,
      letter,
      elapsed,
      newId,
    };
  }

  async function perform(command: Command, mono: number): Promise<ActResult> {
    const { elapsed, next, begins } = spellOf(spell.value, { command, at: mono });
    watch.look();
    if (!withoutPages.has(command.kind)) await wholeShop();
    const at = circumstances(elapsed);
    const decision = await judge(shop, { command, at, load: parts.loadDecide });
    if (decision.kind === 'refused') return decision;
    const opening: readonly Draft[] =
      begins && next ? [{ ...envelopeAt(at), kind: 'spell-begun', stage: next.stage }] : [];
    const drafts = [...opening, ...decision.drafts];
    const events = await keeper.save({ act: newId(), drafts, now: at.now }, (stored) => {
      spell.value = command.kind === 'undo' && next ? afterUndo(next) : next;
      take(stored);
    });
    feed.tell();
    if (sinceSnapshot >= snapshotEvery) void keepSnapshot();
    if (log.station() !== own) onNewStation();
    return { kind: 'saved', events };
  }

  /** Taps are judged one after another, each against the shop that the one before has left. */
  function enqueue(choose: () => Command | undefined): Promise<ActResult> {
    if (parts.onlyLooking) return Promise.resolve(refusedToLook);
    const mono = clock.monotonic();
    const result = queue.then((): ActResult | Promise<ActResult> => {
      const command = choose();
      return command ? perform(command, mono) : nothingLeft;
    });
    queue = result.catch(() => undefined);
    return result;
  }
  const act = (command: Command) => enqueue(() => command);

  async function keepSnapshot(): Promise<void> {
    sinceSnapshot = 0;
    await kept.keep();
  }

  /** Reads the rest of the snapshot, and what was tapped while another one had to be read instead. */
  async function wholeShop(): Promise<void> {
    if (kept.isWhole.value) return;
    await kept.whole();
    const { events } = await log.since(shop.seen);
    take(events);
  }

  const takeBack = (found: RecentAct | undefined): Command | undefined =>
    found && { kind: 'undo', events: inForce(found, shop.voids) };

  const reading = open();
  queue = reading.catch(() => undefined);
  // What another window tells while this one still reads may have come behind what it reads.
  const stopListening = feed.onNews(() => {
    queue = queue.then(refresh).catch(() => undefined);
  });
  await reading.catch((error: unknown) => {
    stopListening();
    throw error;
  });
  judgeAhead();
  watch.look();
  if (!kept.isWhole.value) timer.after(untilPages, () => void wholeShop().catch(() => undefined));

  const session: Session = {
    view,
    isWhole: kept.isWhole,
    acts,
    saving: keeper.saving,
    person,
    spell,
    station: own,
    today: () => circumstances(null).day,
    now: clock.now,
    zone: () => zoneOf(factOf(shop.registers, { register: 'shop', id: 'shop' })),
    clockWatch: watch,
    newId,
    act,
    retry: keeper.retry,
    undoLast: () => enqueue(() => takeBack(lastUndoable(acts.value, shop.voids))),
    putBack: () => enqueue(() => takeBack(lastPutBack(acts.value, shop.voids))),
    canUndo: computed(() => lastUndoable(acts.value, view.value.shop.voids) !== undefined),
    canPutBack: computed(() => lastPutBack(acts.value, view.value.shop.voids) !== undefined),
    enterStage(stage) {
      if (spell.value?.stage !== stage) spell.value = enterStage(stage, clock.monotonic());
    },
    async pause() {
      const now = spell.value;
      if (now?.begun) await act({ kind: 'end-spell', stage: now.stage });
      spell.value = null;
    },
    historyOf: async (subject) => (await errands()).historyOf(log, subject),
    allEvents: async () => (await errands()).allEvents(log),
    exportLines: async () => (await errands()).exportLines(log),
    refresh,
    keepSnapshot,
    keepSnapshotOf: kept.keep,
    entries: log.entries,
    async checkBooks() {
      const { checkBooks } = await import('./books.ts');
      const report = queue.then(async () => {
        await refresh();
        return checkBooks(log, shop);
      });
      queue = report.catch(() => undefined);
      return report;
    },
    async restore(parcel) {
      const { mergeInto } = await errands();
      const restored = await mergeInto(log, { ...parcel, now: clock.now() });
      await refresh();
      feed.tell();
      if (log.station() !== own) onNewStation();
      else await parts.afterRestore?.(session);
      return restored;
    },
    async close() {
      await queue;
      stopListening();
      feed.close();
      log.close();
    },
  };
  return session;
}
