import { describe, expect, test } from 'vitest';
import { chained } from '../../src/domain/log/chain.ts';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { actLine, entryLine } from '../../src/domain/log/journal-line.ts';
import { tailTwin } from '../../src/store/tail-twin.ts';
import { entriesWith, linksOfTwin, loose } from '../support/copy-reads.ts';
import { foreignLog, spellDraft } from '../support/drafts.ts';
import { packedRuns } from '../support/run-makers.ts';
import { testStorage } from '../support/twin-makers.ts';

const [event] = foreignLog();
if (!event) throw new Error('the log has events');
/** A log longer than a tail. */
const long = chained(Array.from({ length: 400 }, (_, at) => ({ ...event, seq: at + 1 })));
const links = long.map(({ link }) => link);
const act = (name: string) => ({ act: name, drafts: [spellDraft('turn')], now: 1000 });

function aTail(kept = new Map<string, string>()) {
  const written: number[] = [];
  const storage = testStorage(kept);
  const counting: typeof storage = {
    ...storage,
    setItem(key, text) {
      written.push(text.length);
      storage.setItem(key, text);
    },
  };
  /** Where the line of an entry lies. */
  const keyWith = (link = '?') => [...kept].find(([, text]) => text.includes(`"link":"${link}"`))?.[0] ?? '';
  const size = () => [...kept.values()].reduce((sum, { length }) => sum + length, 0);
  return { kept, keyWith, size, written, twin: tailTwin(counting, 'tallywright') };
}

describe('a tail', () => {
  test('keeps the newest 300 entries, and knows of all that were ever added', async () => {
    const { twin } = aTail();
    for (let at = 0; at < 400; at += 50) await twin.add(loose(long.slice(at, at + 50)));
    expect(await twin.look()).toMatchObject({ reach: 'tail', holding: holdingOf(links) });
    expect(await linksOfTwin(twin)).toEqual(links.slice(-300));
    expect(await entriesWith(twin, links)).toEqual(long.slice(-300));
  });

  test('keeps within 256,000 signs of entries, the newest of them', async () => {
    const { twin, size } = aTail();
    const wide = chained(
      Array.from({ length: 100 }, (_, at) => ({ ...event, seq: at + 1, note: 'x'.repeat(9000) })),
    );
    await twin.add(loose(wide));
    expect(size()).toBeLessThan(257_000);
    const kept = await linksOfTwin(twin);
    expect(kept.length).toBeGreaterThan(20);
    expect(kept).toEqual(wide.slice(-kept.length).map(({ link }) => link));
    expect((await twin.look()).holding.entries).toBe(100);
  });

  test('pushes out no act that is not settled, however many entries come', async () => {
    const { twin } = aTail();
    await twin.keepAct(act('tap-1'));
    await twin.add(loose(long));
    expect((await twin.look()).unsettled).toEqual([act('tap-1')]);
  });

  test('writes one short text for a tap, however much it holds', async () => {
    const { twin, written } = aTail();
    await twin.add(loose(long.slice(0, 350)));
    const before = written.length;
    await twin.add(loose(long.slice(350, 351)));
    expect(written.slice(before)).toHaveLength(1);
    expect(written.at(-1)).toBeLessThan(JSON.stringify(long[0]).length + 200);
  });

  test('keeps what two windows add by turns', async () => {
    const { kept, twin } = aTail();
    const there = aTail(kept).twin;
    for (let at = 0; at < 320; at += 2) {
      await twin.add(loose(long.slice(at, at + 1)));
      await there.add(loose(long.slice(at, at + 2)));
    }
    expect((await twin.look()).holding).toEqual(holdingOf(links.slice(0, 320)));
    expect(await linksOfTwin(twin)).toEqual(links.slice(20, 320));
    expect(await linksOfTwin(aTail(kept).twin)).toEqual(links.slice(20, 320));
  });

  test('skips and counts a line that was changed, keeps its text, and reads all others', async () => {
    const { kept, keyWith, twin } = aTail();
    for (const entry of long.slice(0, 3)) await twin.add(loose([entry]));
    const key = keyWith(links[1]);
    const changed = kept.get(key)?.replace(links[1] ?? '', links[0] ?? '') ?? '';
    kept.set(key, changed);
    const later = aTail(kept).twin;
    expect(await later.look()).toMatchObject({ unreadable: 1, holding: { entries: 3 } });
    expect(await entriesWith(later, links)).toEqual([long[0], long[2]]);
    await later.add(loose(long.slice(3, 4)));
    expect(kept.get(key)).toBe(changed);
  });

  test('of which the count was changed everywhere counts what it has', async () => {
    const { kept, twin } = aTail();
    for (const entry of long.slice(0, 3)) await twin.add(loose([entry]));
    for (const [key, text] of kept) kept.set(key, text.replace('"entries"', '"entrees"'));
    expect((await aTail(kept).twin.look()).holding).toEqual(holdingOf(links.slice(0, 3)));
  });

  test('counts what comes packed, and what of it it has already once', async () => {
    const { twin } = aTail();
    await twin.add(loose(long.slice(100, 110)));
    await twin.add({ runs: packedRuns(long.slice(0, 300)), entries: [] });
    await twin.add({ runs: packedRuns(long.slice(300)), entries: [] });
    expect((await twin.look()).holding).toEqual(holdingOf(links));
  });

  test('of an earlier version is read on: all in one text', async () => {
    const kept = new Map<string, string>();
    const old = [JSON.stringify(holdingOf(links.slice(0, 320))), ...long.slice(20, 320).map(entryLine)];
    kept.set('tallywright tail', [...old, actLine(JSON.stringify(act('tap-1')))].join('\n'));
    const { twin } = aTail(kept);
    expect(await twin.look()).toMatchObject({
      holding: holdingOf(links.slice(0, 320)),
      unsettled: [act('tap-1')],
    });
    await twin.add(loose(long.slice(319, 330)));
    await twin.keepAct(act('tap-2'));
    const later = aTail(kept).twin;
    expect(await later.look()).toMatchObject({
      holding: holdingOf(links.slice(0, 330)),
      unsettled: [act('tap-1'), act('tap-2')],
    });
    expect(await linksOfTwin(later)).toEqual(links.slice(20, 330));
  });

  test('gives the storage again what it lost from under the window, with the next tap', async () => {
    const { kept, twin } = aTail();
    for (const entry of long.slice(0, 5)) await twin.add(loose([entry]));
    kept.clear();
    expect(await linksOfTwin(twin)).toEqual(links.slice(0, 5));
    await twin.freshen();
    await twin.add(loose(long.slice(5, 6)));
    const later = aTail(kept).twin;
    expect(await linksOfTwin(later)).toEqual(links.slice(0, 6));
    expect((await later.look()).holding).toEqual(holdingOf(links.slice(0, 6)));
  });

  test('that is freshened writes each part in another way, with the same in it, and leaves a changed one', async () => {
    const { kept, keyWith, twin } = aTail();
    for (const entry of long.slice(0, 4)) await twin.add(loose([entry]));
    kept.set(keyWith(links[1]), 'no part at all');
    const before = new Map(kept);
    const after = aTail(kept).twin;
    for (const _ of ['first', 'second']) await after.freshen();
    const same = [...kept].filter(([key, text]) => before.get(key) === text);
    expect(same.map(([, text]) => text)).toEqual(['no part at all']);
    expect(await linksOfTwin(aTail(kept).twin)).toEqual([links[0], links[2], links[3]]);
    expect((await aTail(kept).twin.look()).holding).toEqual(holdingOf(links.slice(0, 4)));
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
      await expect(twin.add(loose(long.slice(0, 1)))).rejects.toThrow();
      await expect(twin.keepAct(act('tap-1'))).rejects.toThrow();
      await expect(twin.settleAct('tap-1')).rejects.toThrow();
    }
  });
});
