import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type Exchange,
  LaneMoved,
  laneKey,
  type Outgoing,
  type Placed,
} from '../../src/replication/exchange.ts';
import type { Seat } from '../../src/replication/shop-key.ts';
import { brokers } from '../support/brokers.ts';

let bodies = 0;
function message(change: Partial<Outgoing> = {}): Outgoing {
  bodies += 1;
  return {
    lane: 'ev',
    kind: 'log1',
    head: `head-${bodies}`,
    body: Uint8Array.of(bodies % 256, 0, 255),
    id: `id-${bodies}`,
    ...change,
  };
}

async function readAll(exchange: Exchange, range: { from?: number; to?: number; bodies?: boolean } = {}) {
  const found: Placed[] = [];
  await exchange.read({ from: 1, bodies: true, ...range }, async (batch) => {
    found.push(...batch);
  });
  return found;
}

describe.each(brokers)('an exchange, %s,', (_, make) => {
  const maker = make();
  // A real one takes a while to start on a machine with other work.
  beforeAll(maker.begin, 60_000);
  afterAll(maker.end);
  const lines: Exchange[] = [];
  const opened = async (seat: Seat) => {
    const exchange = await maker.open(seat);
    lines.push(exchange);
    return exchange;
  };
  const begun = async () => {
    for (const line of lines.splice(0)) line.close();
    await maker.anew();
    return opened('A');
  };

  test('gives what was put, to the byte and in its order, to every seat', async () => {
    const here = await begun();
    const sent = [message(), message({ lane: 'run.2', kind: 'pack1' }), message()];
    const places = await here.push(sent);
    expect(places).toEqual([...places].sort((a, b) => a - b));
    const there = await opened('B');
    expect(await readAll(there)).toEqual(
      sent.map(({ id: _id, ...each }, index) => ({ ...each, seat: 'A', at: places[index] })),
    );
  });

  test('gives heads without bodies, and a part of what stands there', async () => {
    const here = await begun();
    const sent = Array.from({ length: 40 }, () => message());
    const places = await here.push(sent);
    const some = await readAll(here, { from: places[10] ?? 0, to: places[29] ?? 0, bodies: false });
    expect(some.map(({ head }) => head)).toEqual(sent.slice(10, 30).map(({ head }) => head));
    expect(some.every(({ body }) => body === null)).toBe(true);
    expect(await readAll(here, { from: (places.at(-1) ?? 0) + 1 })).toEqual([]);
  });

  test('gives nothing of an empty shop', async () => {
    const here = await begun();
    expect(await readAll(here)).toEqual([]);
    expect(await here.look()).toMatchObject({ last: 0, counts: new Map() });
  });

  test('counts what stands on each lane of each seat, and says that it began anew', async () => {
    const here = await begun();
    const there = await opened('B');
    await here.push([message(), message(), message({ lane: 'run.1' })]);
    await there.push([message()]);
    const { counts, last, created } = await here.look();
    expect(counts).toEqual(
      new Map([
        ['A/ev', 2],
        ['A/run.1', 1],
        ['B/ev', 1],
      ]),
    );
    expect(last).toBe(4);
    expect((await there.look()).created).toBe(created);
  });

  test('takes a message that is offered twice once', async () => {
    const here = await begun();
    const one = message();
    const [first] = await here.push([one]);
    const [again] = await here.push([{ ...message(), id: one.id }]);
    expect(again).toBe(first);
    expect(await readAll(here)).toHaveLength(1);
  });

  test('lets a message take the place of a lane, of its own seat only', async () => {
    const here = await begun();
    const there = await opened('B');
    await here.push([message(), message(), message({ lane: 'run.1' })]);
    await there.push([message()]);
    const [at] = await here.push([message({ replaces: true })]);
    const found = await readAll(here);
    expect(found.map(laneKey)).toEqual(['A/run.1', 'B/ev', 'A/ev']);
    expect(found.at(-1)).toMatchObject({ at, replaces: true });
  });

  test('puts a message only where its lane has not gone on, if that is asked', async () => {
    const here = await begun();
    const [first = 0] = await here.push([message({ after: 0 })]);
    await expect(here.push([message({ after: 0 })])).rejects.toBeInstanceOf(LaneMoved);
    await here.push([message({ lane: 'run.1' })]);
    await here.push([message({ after: first })]);
    await expect(here.push([message({ after: first, replaces: true })])).rejects.toBeInstanceOf(LaneMoved);
    expect(await readAll(here)).toHaveLength(3);
  });

  test('gives what stood there before and what comes then, one behind the other', async () => {
    const here = await begun();
    const there = await opened('B');
    const [first = 0] = await here.push([message()]);
    const old = message();
    await here.push([old]);
    const heads: string[] = [];
    let came = () => {};
    const waitFor = async (count: number) => {
      while (heads.length < count)
        await new Promise<void>((resolve) => {
          came = resolve;
        });
    };
    const following = there.follow(first, async (batch) => {
      heads.push(...batch.map(({ head }) => head));
      came();
    });
    following.catch(() => undefined);
    await waitFor(1);
    const young = [message(), message()];
    await here.push(young);
    await waitFor(3);
    expect(heads).toEqual([old, ...young].map(({ head }) => head));
    there.close();
    await following.catch(() => undefined);
  });

  test('tells at a glance how much stands there, without what stands where', async () => {
    const here = await begun();
    const empty = await here.glance();
    expect(empty).toMatchObject({ last: 0, messages: 0 });
    await here.push([message(), message(), message({ replaces: true })]);
    const { counts, ...rest } = await here.look();
    expect(counts.size).toBe(1);
    expect(await here.glance()).toEqual(rest);
    expect(rest).toEqual({ created: empty.created, last: 3, messages: 1 });
  });

  test('gives one lane of one seat alone, and one message of it', async () => {
    const here = await begun();
    const there = await opened('B');
    const [first, second] = [message({ lane: 'run.1' }), message({ lane: 'run.1' })];
    await here.push([message(), first]);
    await there.push([message({ lane: 'run.1' })]);
    const [at = 0] = await here.push([second]);
    const of = { seat: 'A', lane: 'run.1' };
    const heads = async (range: { from: number; to?: number }) => {
      const found: Placed[] = [];
      await there.read({ ...range, bodies: true, of }, async (batch) => void found.push(...batch));
      return found.map(({ head }) => head);
    };
    expect(await heads({ from: 1 })).toEqual([first.head, second.head]);
    expect(await heads({ from: at, to: at })).toEqual([second.head]);
    expect(await heads({ from: 1, to: 1 })).toEqual([]);
    expect(await heads({ from: at + 1 })).toEqual([]);
  });

  test('has photos apart from the log', async () => {
    const here = await begun();
    const photos = await maker.openPhotos('A');
    lines.push(photos);
    const lane = `ph.${'ab'.repeat(32)}.2` as const;
    const [piece, tap] = [message({ lane, kind: 'photo1' }), message()];
    await photos.push([piece]);
    await here.push([tap]);
    expect((await readAll(photos)).map(({ head }) => head)).toEqual([piece.head]);
    expect((await readAll(here)).map(({ head }) => head)).toEqual([tap.head]);
    expect((await photos.look()).counts).toEqual(new Map([[`A/${lane}`, 1]]));
  });

  test('says that its line is lost, lets nobody wait on it, and keeps what was put', async () => {
    const here = await begun();
    await here.push([message()]);
    const before = await here.look();
    const following = here
      .follow(0, async () => undefined)
      .then(
        () => 'ended',
        () => 'ended',
      );
    await maker.setUp(false);
    await maker.setUp(true);
    await here.closed;
    expect(await following).toBe('ended');
    await expect(here.look()).rejects.toThrow();
    await expect(here.push([message()])).rejects.toThrow();
    const again = await opened('A');
    expect(await again.look()).toEqual(before);
    expect(await readAll(again)).toHaveLength(1);
  });
});
