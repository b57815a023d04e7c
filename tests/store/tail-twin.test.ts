import { describe, expect, test } from 'vitest';
import { chained } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { tailTwin } from '../../src/store/tail-twin.ts';
import { foreignLog, spellDraft } from '../support/drafts.ts';
import { testStorage } from '../support/twin-makers.ts';

const [event] = foreignLog();
if (!event) throw new Error('the log has events');
/** A log longer than a tail. */
const long = chained(Array.from({ length: 400 }, (_, at) => ({ ...event, seq: at + 1 })));
const links = long.map(({ link }) => link);
const act = (name: string) => ({ act: name, drafts: [spellDraft('turn')], now: 1000 });

function aTail() {
  const kept = new Map<string, string>();
  const text = () => kept.get('tallywright tail') ?? '';
  return { kept, text, twin: tailTwin(testStorage(kept), 'tallywright') };
}

describe('a tail', () => {
  test('keeps the newest 300 entries, and knows of all that were ever added', async () => {
    const { twin } = aTail();
    for (let at = 0; at < 400; at += 50) await twin.add(long.slice(at, at + 50));
    expect(await twin.look()).toMatchObject({ reach: 'tail', holding: holdingOf(links) });
    expect(await twin.links()).toEqual(links.slice(-300));
    expect(await twin.entries(links)).toEqual(long.slice(-300));
  });

  test('keeps within 256,000 signs of entries, the newest of them', async () => {
    const { twin, text } = aTail();
    const wide = chained(
      Array.from({ length: 100 }, (_, at) => ({ ...event, seq: at + 1, note: 'x'.repeat(9000) })),
    );
    await twin.add(wide);
    expect(text().length).toBeLessThan(257_000);
    const kept = await twin.links();
    expect(kept.length).toBeGreaterThan(20);
    expect(kept).toEqual(wide.slice(-kept.length).map(({ link }) => link));
    expect((await twin.look()).holding.entries).toBe(100);
  });

  test('pushes out no act that is not settled, however many entries come', async () => {
    const { twin } = aTail();
    await twin.keepAct(act('tap-1'));
    await twin.add(long);
    expect((await twin.look()).unsettled).toEqual([act('tap-1')]);
  });

  test('skips and counts a line that was changed, keeps its text, and reads all others', async () => {
    const { kept, text, twin } = aTail();
    await twin.add(long.slice(0, 3));
    const changed = text().replace(links[1] ?? '', links[0] ?? '');
    kept.set('tallywright tail', changed);
    expect(await twin.look()).toMatchObject({ unreadable: 1, holding: { entries: 3 } });
    expect(await twin.entries(links)).toEqual([long[0], long[2]]);
    await twin.add(long.slice(3, 4));
    expect(text()).toContain(changed.split('\n')[2]);
  });

  test('whose first line was changed counts what it has', async () => {
    const { kept, text, twin } = aTail();
    await twin.add(long.slice(0, 3));
    kept.set('tallywright tail', text().replace('{"entries"', '{"entrees"'));
    expect((await twin.look()).holding).toEqual(holdingOf(links.slice(0, 3)));
  });

  test('in a storage that is full, or keeps nothing, takes nothing for kept', async () => {
    const full = {
      getItem: () => null,
      setItem: () => {
        throw new Error('full');
      },
    };
    const hollow = { getItem: () => null, setItem: () => undefined };
    for (const storage of [full, hollow]) {
      const twin = tailTwin(storage, 'tallywright');
      await expect(twin.add(long.slice(0, 1))).rejects.toThrow();
      await expect(twin.keepAct(act('tap-1'))).rejects.toThrow();
      await expect(twin.settleAct('tap-1')).rejects.toThrow();
    }
  });
});
