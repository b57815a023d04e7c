import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { chained } from '../../src/domain/log/chain.ts';
import { emptyHolding, holdingOf } from '../../src/domain/log/holding.ts';
import { stationId } from '../../src/domain/log/ids.ts';
import { entriesWith, linksOfTwin, loose } from '../support/copy-reads.ts';
import { foreignLog, newerEvent, spellDraft } from '../support/drafts.ts';
import { twinMakers } from '../support/twin-makers.ts';

const entries = chained(foreignLog());
const links = entries.map(({ link }) => link);
const act = (name: string) => ({ act: name, drafts: [spellDraft('turn'), spellDraft('sand')], now: 1000 });

describe.each(twinMakers)('a second copy %s', (_, make) => {
  test('is empty at first', async () => {
    const twin = await make().open();
    expect(await twin.look()).toMatchObject({ holding: emptyHolding, unreadable: 0, unsettled: [] });
    expect(await linksOfTwin(twin)).toEqual([]);
    expect(await entriesWith(twin, links)).toEqual([]);
  });

  test('gives entries back as they were written, and leaves out those that it has not', async () => {
    const twin = await make().open();
    await twin.add(loose(entries.slice(0, 5)));
    expect(await entriesWith(twin, links.slice(3))).toEqual(entries.slice(3, 5));
    expect((await linksOfTwin(twin)).toSorted()).toEqual(links.slice(0, 5).toSorted());
  });

  test('keeps an event of a newer version with all its fields', async () => {
    const twin = await make().open();
    const newer = chained([{ ...newerEvent, station: v.parse(stationId, newerEvent.station) }]);
    await twin.add(loose(newer));
    expect(
      JSON.stringify(
        await entriesWith(
          twin,
          newer.map(({ link }) => link),
        ),
      ),
    ).toBe(JSON.stringify(newer));
  });

  test('holds the same whatever the order, and however often an entry is added', async () => {
    const whole = holdingOf(links);
    await fc.assert(
      fc.asyncProperty(fc.array(fc.shuffledSubarray([...entries]), { maxLength: 4 }), async (parts) => {
        const twin = await make().open();
        for (const part of parts) await twin.add(loose(part));
        await twin.add(loose(entries));
        expect((await twin.look()).holding).toEqual(whole);
      }),
      { numRuns: 15 },
    );
  });

  test('takes many entries at once, each answered only when it is kept', async () => {
    const place = make();
    const twin = await place.open();
    await Promise.all(entries.map((entry) => twin.add(loose([entry]))));
    expect((await (await place.open()).look()).holding).toEqual(holdingOf(links));
  });

  test('sees at the next look what another window has added', async () => {
    const place = make();
    const [here, there] = [await place.open(), await place.open()];
    await here.look();
    await there.add(loose(entries.slice(0, 4)));
    await here.add(loose(entries.slice(4)));
    expect((await here.look()).holding).toEqual(holdingOf(links));
    expect(await entriesWith(here, links.slice(0, 4))).toEqual(entries.slice(0, 4));
    await there.add(loose(entries));
    expect((await here.look()).holding.entries).toBe(entries.length);
  });

  test('refuses an entry that does not fit its link, and keeps what came with it out too', async () => {
    const twin = await make().open();
    const [first, second, third] = entries;
    if (!first || !second || !third) throw new Error('the log has entries');
    await expect(twin.add(loose([first, { ...third, link: second.link }]))).rejects.toThrow();
    expect((await twin.look()).holding).toEqual(emptyHolding);
  });

  test('keeps an act that the store did not take until it is settled, also by another window', async () => {
    const place = make();
    const here = await place.open();
    await here.keepAct(act('tap-1'));
    await here.keepAct(act('tap-2'));
    await here.keepAct(act('tap-1'));
    const there = await place.open();
    expect((await there.look()).unsettled.toSorted((a, b) => a.act.localeCompare(b.act))).toEqual([
      act('tap-1'),
      act('tap-2'),
    ]);
    await there.settleAct('tap-1');
    expect((await here.look()).unsettled).toEqual([act('tap-2')]);
    expect((await there.look()).unsettled).toEqual([act('tap-2')]);
  });

  test('never takes up an act again that was settled, though a slow window keeps it once more', async () => {
    const place = make();
    const twin = await place.open();
    await twin.keepAct(act('tap-1'));
    await twin.settleAct('tap-1');
    await twin.keepAct(act('tap-1'));
    expect((await twin.look()).unsettled).toEqual([]);
    expect((await (await place.open()).look()).unsettled).toEqual([]);
  });

  test('that is closed takes nothing more', async () => {
    const twin = await make().open();
    twin.close();
    await expect(twin.add(loose(entries))).rejects.toThrow();
    await expect(twin.look()).rejects.toThrow();
  });
});
