import { createHash } from 'node:crypto';
import * as v from 'valibot';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import type { Draft } from '../../src/domain/log/event.ts';
import { personId, shopDayText, stationId, variantId } from '../../src/domain/log/ids.ts';
import { type PhotoHash, photoHash } from '../../src/domain/log/photo-facts.ts';
import { laneKey, Refused } from '../../src/replication/exchange.ts';
import { photoDesk, photoLane, piecesOf } from '../../src/replication/photo-message.ts';
import { photoReplicator } from '../../src/replication/photo-replicator.ts';
import type { PhotosStatus, SetAside } from '../../src/replication/replica-status.ts';
import { eventsKeyOf, type Seat } from '../../src/replication/shop-key.ts';
import { memoryLog } from '../../src/store/memory-log.ts';
import { brokers, type TestBroker } from '../support/brokers.ts';
import { handClock } from '../support/hand-clock.ts';
import { memoryBroker } from '../support/memory-broker.ts';
import { guessableBytes, testKey, testShop, until } from '../support/replicas.ts';

type Bytes = Uint8Array<ArrayBuffer>;
type Hand = ReturnType<typeof handClock>;

/** By another maker's SHA-256 than the app's (FIPS 180-4). */
const sha256Of = (bytes: Uint8Array = new Uint8Array()) => createHash('sha256').update(bytes).digest('hex');

/** A photo of so many bytes, and its name. */
function aPicture(seed: number, length = 300_000) {
  const bytes = guessableBytes(seed)(length);
  return { bytes, hash: v.parse(photoHash, sha256Of(bytes)) };
}
type Picture = ReturnType<typeof aPicture>;

const about = {
  zone: { name: 'Europe/London', offset: 0 },
  day: v.parse(shopDayText, '2026-03-02'),
  person: v.parse(personId, 'edda'),
};
const taken = ({ hash, bytes }: Picture): Draft => ({
  ...about,
  kind: 'photo-taken',
  shows: { kind: 'variant', variant: v.parse(variantId, 'ash-copper') },
  photo: { hash, width: 1600, height: 1200, bytes: bytes.length },
});

const stops: (() => Promise<void>)[] = [];
afterEach(async () => {
  for (const stop of stops.splice(0)) await stop();
});

interface TabletParts {
  readonly seat: Seat;
  readonly hand: Hand;
  readonly open: TestBroker['openPhotos'];
  readonly isWanted?: boolean;
  readonly hasRoom?: () => boolean;
}

let acts = 0;

/** A tablet with its log and its photos; logs go from one to another by the test's hands. */
async function aTablet({ seat, hand, open, isWanted = true, hasRoom = () => true }: TabletParts) {
  const store = memoryLog(v.parse(stationId, `station-${seat.toLowerCase()}`));
  const held = new Map<PhotoHash, Bytes>();
  const aside: SetAside[] = [];
  const statuses: PhotosStatus[] = [];
  const keeps: PhotoHash[] = [];
  const desk = photoDesk({
    ...{ shop: testShop, seat, key: await eventsKeyOf(testKey) },
    random: guessableBytes(seat.charCodeAt(0)),
  });
  const photos = photoReplicator({
    ...{ store, desk, seat, timer: hand.timer },
    open: () => open(seat),
    random: seededRandom(seat.charCodeAt(0)),
    shelf: {
      held: async () => new Set(held.keys()),
      bytes: async (photo) => held.get(photo),
      async keep(photo, bytes) {
        keeps.push(photo);
        if (!hasRoom()) throw new Error('no room');
        held.set(photo, bytes);
        return true;
      },
    },
    onAside: (message) => aside.push(message),
    onStatus: (status) => statuses.push(status),
  });
  stops.push(photos.stop);
  photos.logIs({ kind: 'up-to-date' });
  photos.setWanted(isWanted);
  const append = async (draft: Draft) => {
    acts += 1;
    const entries = await store.append({ act: `act-${acts}`, drafts: [draft], now: hand.clock.now() });
    photos.news();
    return entries[0]?.event;
  };
  return {
    ...{ seat, store, held, aside, statuses, keeps, photos, desk, append },
    async take(picture: Picture) {
      held.set(picture.hash, picture.bytes);
      return append(taken(picture));
    },
    letGo(photo: PhotoHash) {
      held.delete(photo);
      return append({ ...about, kind: 'photo-let-go', photo });
    },
  };
}
type Tablet = Awaited<ReturnType<typeof aTablet>>;

/** Brings all that one log has to the other. */
async function tellLog(from: Tablet, to: Tablet): Promise<void> {
  await to.store.merge({ entries: await from.store.entries(), now: 0 });
  to.photos.news();
}

async function twoTablets({ openPhotos: open, pace }: Pick<TestBroker, 'openPhotos' | 'pace'>) {
  const hand = handClock();
  const here = await aTablet({ seat: 'A', hand, open });
  const there = await aTablet({ seat: 'B', hand, open });
  const become = (isSo: () => boolean | Promise<boolean>) => until(hand, isSo, { pace });
  return { hand, here, there, become };
}

async function countsOf(broker: Pick<TestBroker, 'openPhotos'>) {
  const line = await broker.openPhotos('M');
  const { counts } = await line.look();
  line.close();
  return counts;
}

const laneOn = (seat: Seat, { hash, bytes }: Picture) =>
  laneKey({ seat, lane: photoLane(hash, piecesOf(bytes.length)) });

describe.each(brokers)('with a broker, %s, a photo', (_, make) => {
  const broker = make();
  // A real one takes a while to start on a machine with other work.
  beforeAll(broker.begin, 60_000);
  afterAll(broker.end);

  test('that was taken on one tablet comes to the other, to the byte', async () => {
    await broker.anew();
    const { here, there, become } = await twoTablets(broker);
    const [large, small] = [aPicture(1), aPicture(2, 1)];
    await here.take(large);
    await here.take(small);
    await tellLog(here, there);
    await become(() => there.held.size === 2);
    expect(sha256Of(there.held.get(large.hash))).toBe(large.hash);
    expect(sha256Of(there.held.get(small.hash))).toBe(small.hash);
    // In pieces that a broker takes, each once.
    const counts = await countsOf(broker);
    expect(counts.get(laneOn('A', large))).toBe(3);
    expect(counts.size).toBe(2);
  });

  test('goes again when the broker lost everything, by a tablet that only fetched it', async () => {
    await broker.anew();
    const { hand, here, there, become } = await twoTablets(broker);
    const picture = aPicture(3);
    await here.take(picture);
    await tellLog(here, there);
    await become(() => there.held.size === 1);
    await here.photos.stop();
    await broker.wipe();
    const third = await aTablet({ seat: 'C', hand, open: broker.openPhotos });
    await tellLog(here, third);
    await become(() => third.held.size === 1);
    expect(sha256Of(third.held.get(picture.hash))).toBe(picture.hash);
  });

  test('that was let go leaves the broker but for a word of it, and is not fetched again', async () => {
    await broker.anew();
    const { hand, here, there, become } = await twoTablets(broker);
    const [gone, kept] = [aPicture(4), aPicture(5)];
    await here.take(gone);
    await become(async () => (await countsOf(broker)).get(laneOn('A', gone)) === 3);
    await here.letGo(gone.hash);
    await become(async () => (await countsOf(broker)).get(laneOn('A', gone)) === 1);
    await here.take(kept);
    await tellLog(here, there);
    await become(() => there.held.has(kept.hash));
    hand.pass(3_600_000);
    await become(() => there.statuses.at(-1)?.toFetch === 0);
    expect(there.keeps).toEqual([kept.hash]);
  });
});

const inMemory = () => {
  const broker = memoryBroker();
  return { broker, openPhotos: (seat: Seat) => broker.open(seat), pace: 0 };
};

test('lines that are cut cost no piece twice on the way there, and a photo gets through', async () => {
  const { broker } = inMemory();
  const random = seededRandom(11);
  const weather = { random, cut: 0.15, shuffle: 0 };
  const { here, there, become } = await twoTablets({
    openPhotos: (seat) => broker.open(seat, weather),
    pace: 0,
  });
  const picture = aPicture(6, 1_200_000);
  await here.take(picture);
  await tellLog(here, there);
  await become(() => there.held.size === 1);
  expect(sha256Of(there.held.get(picture.hash))).toBe(picture.hash);
  expect(broker.messages()).toHaveLength(piecesOf(picture.bytes.length));
});

test('a photo that lacks a piece is not fetched, and is sent to its end by the tablet that began it', async () => {
  const { broker, ...open } = inMemory();
  const { here, there, become } = await twoTablets(open);
  const picture = aPicture(7);
  await here.take(picture);
  await become(() => broker.messages().length === 3);
  broker.lose(({ at }) => at === 3);
  await tellLog(here, there);
  await become(() => there.held.size === 1);
  expect(there.aside).toEqual([]);
  expect(broker.messages().map(({ at }) => at)).toEqual([1, 2, 3]);
});

test('a lane whose first piece is lost is begun anew', async () => {
  const { broker, ...open } = inMemory();
  const { here, there, become } = await twoTablets(open);
  const picture = aPicture(8);
  await here.take(picture);
  await become(() => broker.messages().length === 3);
  broker.lose(({ at }) => at === 1);
  await tellLog(here, there);
  await become(() => there.held.size === 1);
  expect(sha256Of(there.held.get(picture.hash))).toBe(picture.hash);
});

/** Puts a photo on seat C as a tablet of the shop would, but for what is changed. */
async function plantPhoto(
  broker: ReturnType<typeof memoryBroker>,
  { hash, bytes }: Picture,
  { spoil = (body: Bytes) => body, key = testKey, twice = false } = {},
): Promise<void> {
  const seat = 'C';
  const desk = photoDesk({
    ...{ shop: testShop, seat, key: await eventsKeyOf(key) },
    random: guessableBytes(77),
  });
  const of = piecesOf(bytes.length);
  const size = Math.ceil(bytes.length / of);
  for (let piece = 0; piece < of; piece += 1) {
    const body = bytes.slice(piece * size, (piece + 1) * size);
    const head = { hash, piece: twice && piece === of - 1 ? 0 : piece, of, bytes: bytes.length };
    const sealed = await desk.seal({ kind: 'photo1', head }, { lane: photoLane(hash, of), body });
    broker.plant({ ...sealed, seat, body: spoil(sealed.body) });
  }
}

const flipped = (body: Bytes) => body.map((byte, at) => (at === 40 ? byte ^ 1 : byte));

describe('what lies there under a photo’s name and is not that photo is set aside, and the rest goes on:', () => {
  const [wanted, other, good] = [aPicture(20), aPicture(21), aPicture(22)];
  test.each<[string, SetAside['reason'], (broker: ReturnType<typeof memoryBroker>) => Promise<void>]>([
    ['another picture', 'malformed', (broker) => plantPhoto(broker, { ...other, hash: wanted.hash })],
    ['a changed byte', 'not-sealed-here', (broker) => plantPhoto(broker, wanted, { spoil: flipped })],
    [
      'what another shop sealed',
      'not-sealed-here',
      (broker) => plantPhoto(broker, wanted, { key: Uint8Array.from(testKey, (byte) => byte ^ 1) }),
    ],
    ['one piece twice', 'repeated', (broker) => plantPhoto(broker, wanted, { twice: true })],
    [
      'a body cut short',
      'not-sealed-here',
      (broker) => plantPhoto(broker, wanted, { spoil: (body) => body.slice(0, 20) }),
    ],
  ])('%s', async (_what, reason, plant) => {
    const { broker, openPhotos } = inMemory();
    const { here, there, become } = await twoTablets({ openPhotos, pace: 0 });
    await plant(broker);
    // The tablet that took it believes it there: only its own log comes over.
    await here.append(taken(wanted));
    await here.take(good);
    await tellLog(here, there);
    await become(() => there.held.has(good.hash) && there.aside.length > 0);
    expect(there.held.has(wanted.hash)).toBe(false);
    expect(there.aside.map((message) => message.reason)).toContain(reason);
    expect(there.aside.every(({ seat }) => seat === 'C')).toBe(true);
  });
});

test('a photo whose bytes were spoilt on the tablet is not sent', async () => {
  const { broker, ...open } = inMemory();
  const { here, become } = await twoTablets(open);
  const [spoilt, sound] = [aPicture(30), aPicture(31)];
  here.held.set(spoilt.hash, flipped(spoilt.bytes));
  await here.append(taken(spoilt));
  await here.take(sound);
  await become(() => broker.messages().length === 3);
  expect(new Set(broker.messages().map(({ lane }) => lane))).toEqual(new Set([photoLane(sound.hash, 3)]));
});

test('a tablet that wants no photos opens no line for them, sends none and fetches none', async () => {
  const { broker, openPhotos } = inMemory();
  const hand = handClock();
  let opened = 0;
  const counting = (seat: Seat) => {
    opened += 1;
    return openPhotos(seat);
  };
  const off = await aTablet({ seat: 'A', hand, open: counting, isWanted: false });
  const on = await aTablet({ seat: 'B', hand, open: openPhotos });
  const [own, others] = [aPicture(40), aPicture(41)];
  await off.take(own);
  await on.take(others);
  await tellLog(on, off);
  await tellLog(off, on);
  await until(hand, () => broker.messages().length === 3);
  hand.pass(3_600_000);
  for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  expect([opened, off.held.size, on.held.size]).toEqual([0, 1, 1]);
  // Told that it does, it catches up.
  off.photos.setWanted(true);
  await until(hand, () => off.held.size === 2 && on.held.size === 2);
});

test('no piece goes while the log has something to do', async () => {
  const { broker, ...open } = inMemory();
  const { hand, here, become } = await twoTablets(open);
  here.photos.logIs({ kind: 'to-send', entries: 1 });
  await here.take(aPicture(50));
  hand.pass(600_000);
  for (let turn = 0; turn < 50; turn += 1) await new Promise((resolve) => setImmediate(resolve));
  expect(broker.messages()).toEqual([]);
  here.photos.logIs({ kind: 'up-to-date' });
  await become(() => broker.messages().length === 3);
});

test('a full tablet fetches one photo at a time in vain, and all once it has room', async () => {
  const { openPhotos } = inMemory();
  const hand = handClock();
  let room = false;
  let lines = 0;
  const counting = (seat: Seat) => {
    lines += 1;
    return openPhotos(seat);
  };
  const here = await aTablet({ seat: 'A', hand, open: openPhotos });
  const full = await aTablet({ seat: 'B', hand, open: counting, hasRoom: () => room });
  for (const seed of [60, 61, 62]) await here.take(aPicture(seed, 1000));
  await tellLog(here, full);
  await until(hand, () => full.keeps.length > 3);
  expect(full.keeps.length).toBeLessThanOrEqual(lines);
  room = true;
  await until(hand, () => full.held.size === 3);
});

test('a broker that takes no photos is told of, and they go once it does', async () => {
  const { broker, ...open } = inMemory();
  const { here, become } = await twoTablets(open);
  broker.refuse(new Refused('full', 'no room'));
  await here.take(aPicture(70));
  await become(() => here.statuses.at(-1)?.refused === 'full');
  broker.refuse(undefined);
  await become(() => broker.messages().length === 3 && here.statuses.at(-1)?.refused === null);
});
