import type { LoadDecide } from '../../src/app/judge.ts';
import { openSession, type Session } from '../../src/app/session.ts';
import type { Feed } from '../../src/store/feed.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { handClock } from './hand-clock.ts';
import { openTestLog } from './log-makers.ts';
import { setUpFacts } from './workshop.ts';

/** A feed between windows of one test: telling one tells the others. */
export function pairOfFeeds(): readonly [Feed, Feed] {
  const listeners = new Map<number, Set<() => void>>([
    [0, new Set()],
    [1, new Set()],
  ]);
  const feed = (own: number): Feed => ({
    tell: () => {
      for (const listen of listeners.get(1 - own) ?? []) listen();
    },
    onNews(listen) {
      listeners.get(own)?.add(listen);
      return () => listeners.get(own)?.delete(listen);
    },
    close: () => listeners.get(own)?.clear(),
  });
  return [feed(0), feed(1)];
}

export const noFeed: Feed = { tell: () => {}, onNews: () => () => {}, close: () => {} };

let ids = 0;
const countingId = () => {
  ids += 1;
  return `id-${ids}`;
};

export interface TestSession {
  readonly session: Session;
  readonly hands: ReturnType<typeof handClock>;
  readonly log: LogStore;
}

export async function openTestSession({
  log,
  feed = noFeed,
  hands = handClock(),
  built = 0,
  loadDecide,
}: {
  log?: LogStore;
  feed?: Feed;
  hands?: ReturnType<typeof handClock>;
  built?: number;
  loadDecide?: LoadDecide;
} = {}): Promise<TestSession> {
  const store = log ?? (await openTestLog());
  const session = await openSession({
    log: store,
    feed,
    clock: hands.clock,
    built,
    timer: hands.timer,
    newId: countingId,
    loadDecide,
  });
  return { session, hands, log: store };
}

/** Sets the workshop up through a session, the station's letter included. */
export async function setUpWorkshop(session: Session): Promise<void> {
  for (const set of setUpFacts) await session.act({ kind: 'set', set });
  const value = { letter: 'A', name: 'Lathe', keys: [] };
  await session.act({ kind: 'set', set: { register: 'station', id: session.station, value } });
}
