import { computed, type ReadonlySignal, signal } from '@preact/signals';
import * as v from 'valibot';
import { chained } from '../domain/log/chain.ts';
import type { ShopEvent } from '../domain/log/event.ts';
import { personId, readId, stationId } from '../domain/log/ids.ts';
import type { Shop } from '../domain/shop/shop.ts';
import { tellWindows, windowFeed } from '../store/feed.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import { openIndexedDbLog } from '../store/indexeddb-log.ts';
import { laterTwin } from '../store/later-twin.ts';
import type { LogStore } from '../store/log-store.ts';
import { markKeeper } from '../store/mark.ts';
import { newId } from '../store/new-id.ts';
import type { OpenedTwin } from '../store/open-twin.ts';
import type { Leisure } from './at-leisure.ts';
import { busyHere } from './busy-here.ts';
import { systemClock } from './clock.ts';
import { type Copies, openCopies } from './copies.ts';
import { type Forgets, whatIsForgotten } from './forgetting.ts';
import type { Opening } from './opening.ts';
import type { Preferences, ShopChoice } from './preferences.ts';
import { systemTimer } from './saver.ts';
import { openSession, type Session } from './session.ts';
import type { Naming } from './station-letter.ts';
import { openTwoCopies, type TwoCopies } from './two-copies.ts';
import type { UpdateNeeds } from './update-offer.ts';
import type { Updates } from './updates.ts';

export interface App {
  readonly opening: ReadonlySignal<Opening>;
  readonly preferences: Preferences;
  readonly updates: Updates;
  readonly version: string;
  readonly forgets: Forgets;
  readonly copies: Copies;
  /** The database that the open shop lies in; null where a worker cannot read it: in memory, or of a newer version. */
  readonly database: () => string | null;
  /** Opens the demo shop, in a store of its own; made anew when `afresh` is asked for. */
  readonly openDemo: (afresh?: boolean) => Promise<void>;
  readonly leaveDemo: () => Promise<void>;
  readonly tryAgain: () => Promise<void>;
  /** Opens the shop with these sums instead of those on the screen; they were added up anew from its log. */
  readonly takeRebuilt: (shop: Shop) => Promise<void>;
  /** What goes on beside the window, the exchange with other tablets among it; null where nothing outlives the window. */
  readonly leisure: Promise<Leisure> | null;
}

export interface AppParts {
  readonly preferences: Preferences;
  readonly updates: (needs: UpdateNeeds) => Updates;
  readonly version: string;
  /** When this version was built, ms UTC. */
  readonly builtAt: number;
  /** Name of a station that has got a letter. */
  readonly stationName: (letter: string) => string;
  /** Opens the second copy of a store. Never rejects: where there can be none, it says so at every look. */
  readonly openTwin: (store: string) => Promise<OpenedTwin>;
  /** Small things that are remembered beside the shop; undefined where the browser refuses to. */
  readonly storage: Pick<Storage, 'getItem' | 'setItem'> | undefined;
  /** Makes the demo shop's log as of a moment (ms UTC); loaded only when it is asked for. */
  readonly makeDemo: (now: number) => Promise<readonly ShopEvent[]>;
}

/** What a tap has changed is on the screen by then (ms). */
const untilSeen = 50;

const storeNames: Record<ShopChoice, string> = { own: 'tallywright', demo: 'tallywright-demo' };

/** Opens the shop that this tablet was in last. */
export function openApp(parts: AppParts): App {
  const { preferences, updates: watch, version, builtAt, stationName, openTwin, storage, makeDemo } = parts;
  const forgets = whatIsForgotten({ database: globalThis.indexedDB, settings: storage });
  const opening = signal<Opening>({ kind: 'opening', waitsForOtherWindow: false });

  /** What was put back is still to be told when the shop is opened anew for it. */
  let putBackBefore = 0;
  let shelf: Promise<FileShelf | null> = Promise.resolve(null);

  async function openWhich(which: ShopChoice): Promise<void> {
    opening.value = { kind: 'opening', waitsForOtherWindow: false };
    try {
      const name = storeNames[which];
      const { store, onlyLooking } = await openStore(name);
      const twoCopies = which === 'own' && !onlyLooking ? await openCopiesOf(store, name) : null;
      const log = twoCopies?.log ?? store;
      const naming = { name: stationName, before: twoCopies?.stationBefore() ?? null };
      if (which === 'demo' && !onlyLooking) await fillDemo(log);
      const session = await openSession({
        ...{ log, clock: systemClock, built: builtAt, timer: systemTimer, newId, feed: windowFeed(name) },
        ...{ onlyLooking, net: twoCopies?.net, onNewStation: () => void openAnew() },
        afterRestore: (restored) => nameIfNew(restored, naming),
      });
      session.person.value = readId(personId, preferences.person.value);
      await nameIfNew(session, naming);
      opening.value = {
        kind: 'open',
        session,
        which,
        twoCopies,
        onlyLooking,
        store: onlyLooking ? null : name,
      };
      preferences.shop.value = which;
    } catch (error) {
      opening.value = { kind: 'failed', why: isNewerStore(error) ? 'newer-store' : 'cannot-read', error };
    }
  }

  async function openStore(name: string): Promise<{ store: LogStore; onlyLooking: boolean }> {
    try {
      return { store: await openLog(name), onlyLooking: false };
    } catch (error) {
      if (!isNewerStore(error)) throw error;
      const { openNewerLog } = await import('../store/newer-log.ts');
      // What cannot even be looked at is told of as a store of a newer version all the same.
      const store = await openNewerLog(name, news).catch(() => Promise.reject(error));
      return { store, onlyLooking: true };
    }
  }

  const news = {
    blocked: () => {
      opening.value = { kind: 'opening', waitsForOtherWindow: true } as const;
    },
    outdated: () => {
      opening.value = { kind: 'outdated' };
    },
    lost: () => undefined,
  };

  async function openLog(name: string): Promise<LogStore> {
    if (forgets === 'all') {
      const { memoryLog } = await import('../store/memory-log.ts');
      return memoryLog(v.parse(stationId, newId()));
    }
    return openIndexedDbLog({ name, newStation: newId, news });
  }

  async function openCopiesOf(store: LogStore, name: string): Promise<TwoCopies> {
    const putBack = putBackBefore;
    putBackBefore = 0;
    const opened = openTwin(name);
    shelf = opened.then((files) => files.shelf);
    return openTwoCopies({
      store,
      twin: laterTwin(opened.then(({ twin }) => twin)),
      marks: markKeeper(storage, name),
      now: systemClock.now,
      later: (run) => void systemTimer.after(untilSeen, run),
      putBack,
      onHealed: ({ renewed }) => {
        // A shop that is still being read here hears it, too.
        tellWindows(name);
        if (opening.value.kind !== 'open') return;
        if (renewed) void openAnew();
        else void opening.value.session.refresh();
      },
    });
  }

  /** Opens the same shop again, under the station that its store has now. */
  async function openAnew(): Promise<void> {
    if (opening.value.kind === 'open') putBackBefore = opening.value.twoCopies?.state.value.putBack ?? 0;
    await closeNow();
    await openWhich(preferences.shop.value);
  }

  async function fillDemo(log: LogStore): Promise<void> {
    if ((await log.holding()).records > 0) return;
    const now = systemClock.now();
    await log.merge({ entries: chained(await makeDemo(now)), now });
  }

  async function closeNow(): Promise<void> {
    if (opening.value.kind === 'open') await opening.value.session.close();
  }

  function writableStore(): string | null {
    const now = opening.peek();
    return now.kind === 'open' ? now.store : null;
  }

  const ownSession = computed(() => {
    const now = opening.value;
    return now.kind === 'open' && now.which === 'own' ? now.session : null;
  });
  const copies = openCopies({
    ...{ session: ownSession, name: storeNames.own, storage, shelf: () => shelf, version },
    ...{ clock: systemClock, timer: systemTimer, forgets },
  });

  const leisure =
    forgets === 'all'
      ? null
      : import('./at-leisure.ts').then(({ atLeisure }) => atLeisure(opening, openAnew));

  const updates = watch({
    busyHere: () => (opening.value.kind === 'open' ? busyHere(opening.value.session) : undefined),
    beforeApply: async () => {
      const made = await copies.desk.peek()?.keep();
      if (made?.kind === 'failed') throw new Error('no copy could be made before the update');
    },
  });
  void updates.atColdStart().then((reloading) => {
    if (!reloading) void openWhich(preferences.shop.value);
  });
  return {
    opening,
    preferences,
    updates,
    version,
    forgets,
    copies,
    leisure,
    database: () => (forgets === 'all' ? null : writableStore()),
    async openDemo(afresh = false) {
      await closeNow();
      if (afresh) await (await import('../store/remove-shop.ts')).removeShop(storeNames.demo);
      await openWhich('demo');
    },
    async leaveDemo() {
      await closeNow();
      await openWhich('own');
    },
    async takeRebuilt(shop) {
      const now = opening.value;
      if (now.kind !== 'open') return;
      await now.session.keepSnapshotOf(shop);
      await openAnew();
    },
    tryAgain: () => openWhich(preferences.shop.value),
  };
}

function isNewerStore(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'VersionError';
}

/** Gives a station of a shop its letter when it has none: at a first start, after a restore, in a new store. */
async function nameIfNew(session: Session, naming: Naming): Promise<void> {
  const { registers } = session.view.value.shop;
  if (registers.size === 0 || registers.has(`station/${session.station}`)) return;
  const { nameStation } = await import('./station-letter.ts');
  await nameStation(session, naming);
}
