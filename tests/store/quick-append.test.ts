import { describe, expect, test } from 'vitest';
import { chainFaults } from '../../src/domain/log/chain-faults.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import type { LogStore } from '../../src/store/log-store.ts';
import { foreignEntries, spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog, sealAll } from '../support/log-makers.ts';

const now = Date.UTC(2026, 2, 2, 9);
const tap = (name: string | number) => ({ act: `tap-${name}`, drafts: [spellDraft('turn')], now });

/** A log that adds up: no gap, no break, each entry once, and as much as was written down. */
async function addsUp(log: LogStore, entries: number) {
  const all = await log.entries();
  expect(all).toHaveLength(entries);
  expect(chainFaults(all)).toEqual({ gaps: [], breaks: [] });
  const { written, records } = await log.holding();
  expect(records).toBe(entries);
  expect(written).toEqual(holdingOf(all.map(({ link }) => link)));
}

describe('taps of several windows of one tablet', () => {
  test('stand in one chain, whoever is quicker', async () => {
    const name = freshName();
    const windows = await Promise.all([openTestLog(name), openTestLog(name), openTestLog(name)]);
    for (let round = 0; round < 20; round += 1) {
      await Promise.all(windows.map((log, window) => log.append(tap(`${round}-${window}`))));
      if (round % 7 === 3) await sealAll(name, { young: round % 3, together: 1 });
      if (round === 10) await windows[1]?.merge({ entries: foreignEntries(), now });
    }
    await addsUp(await openTestLog(name), 60 + foreignEntries().length);
  });

  test('of a window that slept while another went on, and all of that was sealed, come behind it', async () => {
    const name = freshName();
    const [sleeping, other] = [await openTestLog(name), await openTestLog(name)];
    for (const at of [1, 2]) await sleeping.append(tap(at));
    for (const at of [3, 4, 5]) await other.append(tap(at));
    await sealAll(name);
    const [late] = await sleeping.append(tap(6));
    expect(late?.event.seq).toBe(6);
    await addsUp(await openTestLog(name), 6);
  });

  test('go on under the new station when another window has taken one', async () => {
    const name = freshName();
    const [log, other] = [await openTestLog(name), await openTestLog(name, 'station-b')];
    await log.append(tap(1));
    const before = log.station();
    const own = foreignEntries(before);
    await other.merge({ entries: own, now });
    expect(other.station()).not.toBe(before);
    // The first one may still be written under the old name; then the window knows.
    await log.append(tap(2));
    await log.append(tap(3));
    expect(log.station()).toBe(other.station());
    const all = await (await openTestLog(name)).entries();
    expect(all.filter(({ event }) => event.kind === 'spell-begun')).toHaveLength(3);
  });

  test('of which the first is tried again elsewhere count once', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    const first = await log.append(tap(1));
    await log.append(tap(2));
    const other = await openTestLog(name);
    expect(await other.append({ ...tap(1), tried: true })).toEqual(first);
    expect(await log.append(tap(1))).toEqual(first);
    await addsUp(log, 2);
  });
});

describe('a store that was shut', () => {
  test('goes on behind its last tap, whether the head was written since or not', async () => {
    const name = freshName();
    for (let round = 0; round < 5; round += 1) {
      const log = await openTestLog(name);
      for (let at = 0; at < 3; at += 1) await log.append(tap(`${round}-${at}`));
      if (round === 2) await sealAll(name);
      log.close();
    }
    await addsUp(await openTestLog(name), 15);
  });

  test('and whose clock is set back six years still gives later stamps', async () => {
    const name = freshName();
    const log = await openTestLog(name);
    const [before] = await log.append(tap(1));
    log.close();
    const [after] = await (await openTestLog(name)).append({ ...tap(2), now: now - 6 * 365 * 86_400_000 });
    expect(after?.event.stamp).toEqual({ wall: before?.event.stamp.wall, tick: 1 });
  });
});
