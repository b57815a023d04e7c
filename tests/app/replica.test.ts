import { signal } from '@preact/signals';
import { afterEach, describe, expect, test } from 'vitest';
import type { Locks } from '../../src/app/one-at-a-time.ts';
import { openReplica, type ReplicaDesk } from '../../src/app/replica.ts';
import type { Joined } from '../../src/replication/joined.ts';
import { joiningLink } from '../../src/replication/joining-link.ts';
import { eventsKeyOf, seatSeedOf } from '../../src/replication/shop-key.ts';
import { wordsOfShop } from '../../src/replication/shop-words.ts';
import { forgetJoined, keepJoined, loadJoined } from '../../src/store/kept-replica.ts';
import type { FromReplica, ToReplica } from '../../src/worker/replica-protocol.ts';
import { handClock } from '../support/hand-clock.ts';
import { testKey, testShop } from '../support/replicas.ts';
import { tabletLocks } from '../support/tablet-locks.ts';

const page = 'https://shop-pc.lan/';
const address = 'wss://shop-pc.lan/sync';
const invitation = { address, shop: testShop, key: testKey };

/** A worker that a test answers for. */
function aCrew() {
  const workers: { asked: ToReplica[]; ended: boolean; say: (message: FromReplica) => void }[] = [];
  const start = () => {
    const listeners = new Set<(event: { data: FromReplica }) => void>();
    const worker = {
      asked: [] as ToReplica[],
      ended: false,
      say: (data: FromReplica) => {
        for (const listen of listeners) listen({ data });
      },
    };
    workers.push(worker);
    return {
      postMessage: (message: ToReplica) => void worker.asked.push(message),
      terminate: () => {
        worker.ended = true;
      },
      addEventListener: (kind: string, listen: unknown) => {
        if (kind === 'message') listeners.add(listen as (event: { data: FromReplica }) => void);
      },
    };
  };
  return { workers, start };
}

const desks: ReplicaDesk[] = [];
afterEach(async () => {
  for (const desk of desks.splice(0)) desk.close();
  await forgetJoined();
});

async function aDesk(locks?: Locks) {
  const { workers, start } = aCrew();
  const store = signal<string | null>('tallywright');
  const merged: boolean[] = [];
  const desk = await openReplica({
    ...{ store, page, start, locks, timer: handClock().timer },
    onMerged: ({ renewed }) => void merged.push(renewed),
  });
  desks.push(desk);
  return { desk, workers, store, merged };
}

async function joinedAs(mayInvite: boolean): Promise<Joined> {
  const keys = { seed: await seatSeedOf(testKey, 'B'), events: await eventsKeyOf(testKey) };
  return {
    ...{ address, shop: testShop, seat: 'B', tablet: 'abcd2345', photos: true },
    ...{ ...keys, key: mayInvite ? testKey : null },
  };
}

const turn = () => new Promise((resolve) => setTimeout(resolve, 20));

async function joined(mayInvite = true, locks?: Locks) {
  const place = await aDesk(locks);
  const joining = place.desk.join({ link: joiningLink(invitation, page) }, { mayInvite });
  await turn();
  place.workers[0]?.say({ kind: 'joined', joined: await joinedAs(mayInvite) });
  expect(await joining).toEqual({ kind: 'joined' });
  return place;
}

test('a tablet that has not joined starts no worker', async () => {
  const { desk, workers } = await aDesk();
  expect(workers).toEqual([]);
  expect(desk.joined.value).toBeNull();
  expect(desk.status.value).toEqual({ kind: 'off' });
});

test('joining takes a seat, is kept, and starts to replicate the open store', async () => {
  const { desk, workers } = await joined();
  expect(workers[0]?.asked).toMatchObject([{ kind: 'join', invitation, mayInvite: true }]);
  expect(workers[0]?.ended).toBe(true);
  expect(workers[1]?.asked).toMatchObject([{ kind: 'run', store: 'tallywright', joined: { seat: 'B' } }]);
  expect(desk.joined.value).toEqual({ address, shop: testShop, seat: 'B', mayInvite: true });
  const again = await aDesk();
  expect(again.workers[0]?.asked).toMatchObject([{ kind: 'run' }]);
});

test('the parts of an invitation do as well, its key in words', async () => {
  const { desk, workers } = await aDesk();
  const words = wordsOfShop(testKey).join(' ').toUpperCase();
  void desk.join({ address: ` ${address}`, shop: testShop, words }, { mayInvite: false });
  await turn();
  expect(workers[0]?.asked).toMatchObject([{ kind: 'join', invitation, mayInvite: false }]);
});

test.each([
  { link: 'https://shop-pc.lan/#/bench' },
  { address, shop: testShop, words: 'twelve words that are none' },
  { address: 'https://shop-pc.lan', shop: testShop, words: wordsOfShop(testKey).join(' ') },
])('what invites to nothing joins nothing: %o', async (invited) => {
  const { desk, workers } = await aDesk();
  expect(await desk.join(invited, { mayInvite: true })).toEqual({ kind: 'no-invitation' });
  expect(workers).toEqual([]);
});

test('a seat that cannot be had is told of, and nothing is kept', async () => {
  const { desk, workers } = await aDesk();
  const joining = desk.join({ link: joiningLink(invitation, page) }, { mayInvite: true });
  await turn();
  workers[0]?.say({ kind: 'not-joined', because: { kind: 'no-seat' } });
  expect(await joining).toEqual({ kind: 'no-seat' });
  expect(await loadJoined()).toBeUndefined();
});

test('only a tablet that keeps the key can invite', async () => {
  const inviting = await joined();
  expect(await inviting.desk.invitation()).toEqual({
    link: joiningLink(invitation, page),
    words: wordsOfShop(testKey),
  });
  await inviting.desk.leave();
  const { desk } = await joined(false);
  expect(await desk.invitation()).toBeUndefined();
});

test('what the worker tells is passed on', async () => {
  const { desk, workers, merged } = await joined();
  workers[1]?.say({ kind: 'status', status: { kind: 'to-send', entries: 3 } });
  workers[1]?.say({ kind: 'aside', message: { at: 7, seat: 'C', reason: 'malformed', problem: 'no JSON' } });
  workers[1]?.say({ kind: 'merged', renewed: true });
  expect(desk.status.value).toEqual({ kind: 'to-send', entries: 3 });
  expect(desk.setAside.value).toMatchObject([{ at: 7, reason: 'malformed' }]);
  expect(merged).toEqual([true]);
});

test('a tablet that joined before photos went sends them; a choice against it is kept, and told at once', async () => {
  const { photos: _, ...before } = await joinedAs(false);
  await keepJoined(before);
  const { desk, workers } = await aDesk();
  expect(desk.photos.value).toBe(true);
  expect(workers[0]?.asked).toMatchObject([{ kind: 'run', joined: { photos: true } }]);
  await desk.setPhotos(false);
  expect(workers[0]?.asked.at(-1)).toEqual({ kind: 'stop' });
  expect(workers[1]?.asked).toMatchObject([{ kind: 'run', joined: { photos: false } }]);
  const again = await aDesk();
  expect(again.desk.photos.value).toBe(false);
  expect(again.workers[0]?.asked).toMatchObject([{ kind: 'run', joined: { photos: false } }]);
});

test('the worker is ended with the store, begun anew with it, and ended for good by leaving', async () => {
  const { desk, workers, store } = await joined();
  store.value = null;
  expect(workers[1]?.asked.at(-1)).toEqual({ kind: 'stop' });
  workers[1]?.say({ kind: 'stopped' });
  expect(workers[1]?.ended).toBe(true);
  store.value = 'tallywright';
  expect(workers[2]?.asked).toMatchObject([{ kind: 'run' }]);
  await desk.leave();
  expect(workers[2]?.asked.at(-1)).toEqual({ kind: 'stop' });
  expect(await loadJoined()).toBeUndefined();
});

describe('of two windows of a tablet', () => {
  async function twoWindows() {
    const locks = tabletLocks();
    const second = await aDesk(locks);
    const first = await joined(true, locks);
    await turn();
    return { locks, first, second };
  }

  test('one joins, both show that, and one of them has the worker', async () => {
    const { first, second } = await twoWindows();
    expect(second.desk.joined.value).toEqual(first.desk.joined.value);
    expect(first.workers).toHaveLength(2);
    expect(second.workers).toEqual([]);
  });

  test('both show how it stands and what was set aside, and a window that is opened later, too', async () => {
    const { locks, first, second } = await twoWindows();
    first.workers[1]?.say({ kind: 'status', status: { kind: 'unreachable', since: 5, entries: 2 } });
    const message = { at: 7, seat: 'C', reason: 'malformed', problem: 'no JSON' } as const;
    first.workers[1]?.say({ kind: 'aside', message });
    const third = await aDesk(locks);
    await turn();
    for (const { desk } of [first, second, third]) {
      expect(desk.status.value).toEqual({ kind: 'unreachable', since: 5, entries: 2 });
      expect(desk.setAside.value).toEqual([message]);
    }
  });

  test('the one without the worker has it try at once, and hears of a new station', async () => {
    const { first, second } = await twoWindows();
    second.desk.hurry();
    await turn();
    expect(first.workers[1]?.asked.at(-1)).toEqual({ kind: 'hurry' });
    first.workers[1]?.say({ kind: 'merged', renewed: false });
    first.workers[1]?.say({ kind: 'merged', renewed: true });
    await turn();
    expect(first.merged).toEqual([false, true]);
    // What came in without a new station it reads by the feed of the store.
    expect(second.merged).toEqual([true]);
  });

  test('the other takes over when one goes', async () => {
    const { first, second } = await twoWindows();
    first.desk.close();
    await turn();
    expect(second.workers[0]?.asked).toMatchObject([{ kind: 'run', store: 'tallywright' }]);
    second.workers[0]?.say({ kind: 'status', status: { kind: 'up-to-date' } });
    expect(second.desk.status.value).toEqual({ kind: 'up-to-date' });
  });

  test('when one leaves the shop, no other goes on with it', async () => {
    const { first, second } = await twoWindows();
    await second.desk.leave();
    await turn();
    expect(first.workers[1]?.asked.at(-1)).toEqual({ kind: 'stop' });
    expect(first.desk.joined.value).toBeNull();
    expect(second.workers).toEqual([]);
  });

  test('what another version says harms nothing', async () => {
    const { second } = await twoWindows();
    const other = new BroadcastChannel('other tablets');
    for (const said of [null, 'x', { kind: 'standing', status: { kind: 'asleep' }, setAside: [] }])
      other.postMessage(said);
    await turn();
    other.close();
    expect(second.desk.status.value).toEqual({ kind: 'off' });
  });
});

test('what joining keeps lies in no database that the rescue page saves', async () => {
  await joined();
  const { readDatabases } = await import('../../src/rescue/read-databases.ts');
  const saved = JSON.stringify(await readDatabases(indexedDB));
  expect(saved).not.toContain(testShop);
  expect((await indexedDB.databases()).map(({ name }) => name)).toContain('joined-broker');
});
