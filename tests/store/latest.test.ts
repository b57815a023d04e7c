import { describe, expect, test } from 'vitest';
import { foreignEntries, spellDraft } from '../support/drafts.ts';
import { logMakers } from '../support/log-makers.ts';

const now = Date.UTC(2026, 2, 2, 9);

describe.each(logMakers)('a log %s', (_, make) => {
  test('tells what stands behind the highest numbers that were seen, and what was tapped here', async () => {
    const log = await make();
    await log.append({ act: 'first', drafts: [spellDraft('turn')], now });
    const foreign = foreignEntries();
    await log.merge({ entries: foreign, now });
    const { young, sealed } = await log.latest(new Map());
    const told = new Set([...young.map(({ id }) => id.station), ...sealed.keys()]);
    expect(told).toEqual(new Set([log.station(), 'station-z']));
    for (const { id, entry, isOwn } of young) {
      expect(isOwn).toBe(id.station === log.station());
      expect(entry.event).toMatchObject(id);
    }
    const seen = new Map([
      [log.station(), 1],
      ['station-z', foreign.length],
    ]);
    expect(await log.latest(seen)).toEqual({ young: [], sealed: new Map() });
    await log.append({ act: 'second', drafts: [spellDraft('wax')], now });
    const next = await log.latest(seen);
    const numbers = [...next.young.map(({ id }) => id.seq), ...next.sealed.values()];
    expect(numbers).toEqual([2]);
  });
});
