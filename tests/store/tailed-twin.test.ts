import { expect, test } from 'vitest';
import { holdingOf } from '../../src/domain/log/holding.ts';
import { emptyJournal, memoryTwin } from '../../src/store/memory-twin.ts';
import { tailTwin } from '../../src/store/tail-twin.ts';
import { tailedTwin } from '../../src/store/tailed-twin.ts';
import type { Twin } from '../../src/store/twin.ts';
import { entriesWith, loose } from '../support/copy-reads.ts';
import { foreignEntries, spellDraft } from '../support/drafts.ts';

const entries = foreignEntries();
const act = { act: 'a tap', drafts: [spellDraft('turn')], now: 1 };

/** A journal and a tail that outlive the twins over them. */
function aTablet() {
  const kept = new Map<string, string>();
  const storage = {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => void kept.set(key, text),
  };
  const journal = emptyJournal();
  const open = (change: Partial<Twin> = {}) =>
    tailedTwin({ journal: { ...memoryTwin(journal), ...change }, tail: tailTwin(storage, 'shop') });
  return { journal, kept, open };
}

test('what the browser took away with the files comes back from the tail, acts that were never stored too', async () => {
  const { journal, open } = aTablet();
  const first = open();
  await first.add(loose(entries));
  await first.keepAct(act);
  journal.entries.clear();
  journal.acts.clear();
  const report = await open().look();
  expect(report.holding).toEqual(holdingOf(entries.map(({ link }) => link)));
  expect(report.unsettled).toEqual([act]);
  expect(
    await entriesWith(
      open(),
      entries.map(({ link }) => link),
    ),
  ).toEqual(entries);
});

test('a settled act does not come back', async () => {
  const { open } = aTablet();
  const first = open();
  await first.keepAct(act);
  await first.settleAct(act.act);
  expect((await open().look()).unsettled).toEqual([]);
});

test('a journal that refuses is told of, and the tail has the entries all the same', async () => {
  const { open } = aTablet();
  const full = open({ add: () => Promise.reject(new Error('full')) });
  await expect(full.add(loose(entries))).rejects.toThrow('full');
  expect((await open().look()).holding.entries).toBe(entries.length);
});

test('a tail that takes nothing and tells nonsense stands in nobody’s way', async () => {
  const { kept, open } = aTablet();
  const set = kept.set.bind(kept);
  kept.set = () => {
    throw new DOMException('full', 'QuotaExceededError');
  };
  const twin = open();
  await twin.add(loose(entries));
  kept.set = set;
  kept.set('shop tail', 'what is this?');
  expect((await twin.look()).holding.entries).toBe(entries.length);
});
