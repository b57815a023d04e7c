import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chained, type Entry, entryAfter, noLink } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { countIn, emptyParcel } from '../../src/domain/packed/parcel.ts';
import { addEvent, emptyShop } from '../../src/domain/shop/shop.ts';
import { aWorkshop } from '../support/a-shop.ts';
import { foreignEntries, foreignLog, newerEntry, newerEvent, spellDraft } from '../support/drafts.ts';
import { logMakers } from '../support/log-makers.ts';
import { part, partFacts } from '../support/workshop.ts';

const now = Date.UTC(2026, 2, 2, 9);
const sixYears = 6 * 365 * 86_400_000;
const act = (name: string, stages: readonly string[], at = now) => ({
  act: name,
  drafts: stages.map((stage) => spellDraft(stage)),
  now: at,
});
const everything = new Map();
const bySeq = (a: Entry, b: Entry) => a.event.seq - b.event.seq;

describe.each(logMakers)('a log %s', (_, make) => {
  test('numbers its events without a gap and gives all events of one tap one stamp', async () => {
    const log = await make();
    await log.append(act('tap-1', ['turn', 'sand']));
    await log.append(act('tap-2', ['sand']));
    const { events } = await log.since(everything);
    expect(events.map(({ seq }) => seq)).toEqual([1, 2, 3]);
    expect(events.map(({ stamp }) => stamp)).toEqual([
      { wall: now, tick: 0 },
      { wall: now, tick: 0 },
      { wall: now, tick: 1 },
    ]);
  });

  test('a tap that is appended again adds nothing and returns what is there', async () => {
    const log = await make();
    const first = await log.append(act('tap-1', ['turn', 'sand']));
    await log.append(act('tap-2', ['turn']));
    expect(await log.append(act('tap-1', ['turn', 'sand']))).toEqual(first);
    expect((await log.since(everything)).events).toHaveLength(3);
  });

  test('a clock that is set back six years changes nothing in the order', async () => {
    const log = await make();
    const [before] = await log.append(act('tap-1', ['turn']));
    const [after] = await log.append(act('tap-2', ['turn'], now - sixYears));
    expect(after?.event.seq).toBe((before?.event.seq ?? 0) + 1);
    expect(after?.event.stamp).toEqual({ wall: now, tick: 1 });
  });

  test('merging is a union: twice, shuffled or in parts adds nothing more', async () => {
    const foreign = foreignEntries();
    await fc.assert(
      fc.asyncProperty(fc.shuffledSubarray([...foreign], { minLength: 0 }), async (some) => {
        const log = await make();
        const rest = foreign.length - some.length;
        expect(await log.merge({ entries: some, now })).toMatchObject({
          added: { runs: [], entries: some.toSorted(bySeq) },
          here: 0,
        });
        const second = await log.merge({ entries: foreign, now });
        expect([countIn(second.added), second.here]).toEqual([rest, some.length]);
        const third = await log.merge({ entries: foreign.toReversed(), now });
        expect(third).toEqual({
          added: emptyParcel,
          here: foreign.length,
          mended: 0,
          unplaced: 0,
          renewed: false,
        });
        const { events } = await log.since(everything);
        expect(events.toSorted((a, b) => a.seq - b.seq)).toEqual(foreignLog());
        expect((await log.entries()).toSorted(bySeq)).toEqual(foreign);
        expect(await log.holding()).toEqual({
          written: holdingOf(foreign.map(({ link }) => link)),
          records: foreign.length,
        });
      }),
      { numRuns: 15 },
    );
  });

  test('since a version vector come the events that it has not seen, those in its gaps included', async () => {
    const log = await make();
    const foreign = foreignLog();
    await log.merge({ entries: foreignEntries(), now });
    const shop = emptyShop();
    for (const event of foreign.filter(({ seq }) => seq !== 3 && seq < 20)) addEvent(shop, event);
    const missing = (await log.since(shop.seen)).events.filter((event) => addEvent(shop, event));
    expect(missing.map(({ seq }) => seq)).toEqual(
      foreign.map(({ seq }) => seq).filter((seq) => seq === 3 || seq >= 20),
    );
  });

  test('the history of a tray has what was taken back, and the split on both its trays', async () => {
    const log = await make();
    const foreign = foreignLog();
    await log.merge({ entries: foreignEntries(), now });
    const split = foreign.find((event) => event.kind === 'tray-split');
    if (!split) throw new Error('the log has a split');
    const kinds = async (tray: typeof split.of.tray) =>
      (await log.about(tray)).events.map(({ kind }) => kind);
    expect(await kinds(split.of.tray)).toEqual([
      'tray-made',
      'passed',
      'passed',
      'voided',
      'flawed',
      'tray-split',
    ]);
    expect(await kinds(split.into.tray)).toEqual(['tray-split']);
  });

  test('the history of a part has its deliveries and counts, also what was taken back, and no tap of a tray', async () => {
    const log = await make();
    const shop = aWorkshop();
    for (const set of partFacts) shop.set(set);
    const lines = [
      { part: part.core, pieces: 20, cost: null },
      { part: part['copper-ferrule'], pieces: 9, cost: 100 },
    ];
    shop.act({ kind: 'receive-parts', parts: lines, note: 'two lines' });
    shop.pass(shop.tray('ash-copper', 2), 'bore', { pieces: 2 });
    const counted = {
      kind: 'count-parts',
      part: part.core,
      heap: 'shelf',
      counted: 19,
      why: 'lost',
      note: '',
    } as const;
    shop.undo(shop.act(counted));
    await log.merge({ entries: chained(shop.log), now });
    const kinds = async (name: keyof typeof part) =>
      (await log.about(`part/${part[name]}`)).events.map(({ kind }) => kind);
    expect(await kinds('core')).toEqual(['parts-received', 'parts-counted', 'voided']);
    expect(await kinds('copper-ferrule')).toEqual(['parts-received']);
    expect(await kinds('nickel-ferrule')).toEqual([]);
  });

  test('the latest own events are those of this station alone, the newest last', async () => {
    const log = await make();
    for (const name of ['a', 'b', 'c']) await log.append(act(name, ['turn']));
    await log.merge({ entries: foreignEntries(), now });
    expect((await log.latestOwn(2)).events.map(({ seq }) => seq)).toEqual([2, 3]);
  });

  test('a snapshot comes back as it was, maps and sets included', async () => {
    const log = await make();
    const shop = { sums: new Map([['turn|ash', 7]]), seen: new Set([1, 3]) };
    expect(await log.loadSnapshot()).toBeUndefined();
    await log.saveSnapshot({ over: null, make: () => ({ format: 1, shop, pages: new Map() }) });
    expect(await log.loadSnapshot()).toEqual({ format: 1, shop, edition: 1, pages: 0 });
  });

  test('pages of a snapshot come with their own front only, and are kept until they are written anew', async () => {
    const log = await make();
    const save = (over: number | null, front: string, pages: Readonly<Record<string, number>>) =>
      log.saveSnapshot({
        over,
        make: () => ({ format: 1, shop: front, pages: new Map(Object.entries(pages)) }),
      });
    const pagesOf = async (edition: number) => {
      const pages: unknown[] = [];
      return (await log.loadPages(edition, (page) => pages.push(page)))
        ? pages.toSorted()
        : 'another edition';
    };
    expect(await save(null, 'first', { a: 1, b: 2 })).toBe(1);
    expect(await pagesOf(1)).toEqual([1, 2]);
    expect(await save(1, 'second', { b: 3, c: 4 })).toBe(2);
    expect(await pagesOf(1)).toBe('another edition');
    expect(await pagesOf(2)).toEqual([1, 3, 4]);
    expect(await log.loadSnapshot()).toMatchObject({ shop: 'second', edition: 2, pages: 3 });
    // Who was saved over by another window changes nothing, and says so.
    expect(await save(1, 'stale', { a: 9 })).toBeUndefined();
    expect(await pagesOf(2)).toEqual([1, 3, 4]);
    expect(await save(null, 'whole', { d: 5 })).toBe(3);
    expect(await pagesOf(3)).toEqual([5]);
  });

  test('events of a newer version are kept and told apart', async () => {
    const log = await make();
    await log.merge({ entries: [newerEntry, ...foreignEntries()], now });
    const reading = await log.since(everything);
    expect(reading.newer).toEqual([newerEvent]);
    expect(reading.damaged).toEqual([]);
    expect(reading.events).toHaveLength(foreignLog().length);
  });

  test('the own events form a chain from nothing on, through every kind of tap', async () => {
    const log = await make();
    for (const name of ['a', 'b', 'c']) await log.append(act(name, ['turn', 'sand']));
    const entries = await log.entries();
    let prev = noLink;
    for (const entry of entries) {
      expect(entry).toEqual(entryAfter(prev, entry.event));
      prev = entry.link;
    }
    expect(entries).toHaveLength(6);
    expect((await log.holding()).written).toEqual(holdingOf(entries.map(({ link }) => link)));
  });

  test('a tap is known again however many others came between', async () => {
    const log = await make();
    const first = await log.append(act('tap', ['turn']));
    for (let other = 0; other < 60; other += 1) await log.append(act(`other ${other}`, ['sand']));
    expect(await log.append(act('tap', ['turn']))).toEqual(first);
    expect((await log.since(everything)).events).toHaveLength(61);
  });

  test('a store into which entries of its own station come goes on under a new one', async () => {
    const log = await make();
    const own = foreignEntries('station-a');
    expect(await log.merge({ entries: own, now })).toMatchObject({ renewed: true });
    expect(log.station()).not.toBe('station-a');
    const [entry] = await log.append(act('tap-1', ['turn']));
    expect(entry?.event).toMatchObject({ station: log.station(), seq: 1 });
    expect(await log.merge({ entries: own, now })).toMatchObject({ added: emptyParcel, renewed: false });
  });

  test('its clock goes on past the stamps that it has seen, but not after one that is years ahead', async () => {
    const log = await make();
    const [first] = foreignLog();
    if (!first) throw new Error('the log has events');
    const anHourAhead = entryAfter(noLink, { ...first, stamp: { wall: now + 3_600_000, tick: 4 } });
    const yearsAhead = entryAfter(anHourAhead.link, {
      ...first,
      seq: 2,
      stamp: { wall: now + sixYears, tick: 0 },
    });
    await log.merge({ entries: [yearsAhead, anHourAhead], now });
    const [entry] = await log.append(act('tap-1', ['turn']));
    expect(entry?.event.stamp).toEqual({ wall: now + 3_600_000, tick: 6 });
  });
});
