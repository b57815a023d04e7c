import { expect, test } from 'vitest';
import type { Entry } from '../../src/domain/log/chain.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import { readBackup } from '../../src/store/backup/read-backup.ts';
import { foreignEntries, foreignLog } from '../support/drafts.ts';
import { openTestSession } from '../support/open-test-session.ts';

test('a restore adds what is not there, shows it at once, and changes nothing the second time', async () => {
  const { session } = await openTestSession();
  const entries = foreignEntries();
  const restore = (some: readonly Entry[]) => session.restore({ runs: [], entries: some });
  expect(await restore(entries.slice(0, 9))).toEqual({ added: 9, here: 0, unplaced: 0 });
  expect(await restore(entries)).toEqual({ added: entries.length - 9, here: 9, unplaced: 0 });
  expect(session.view.value.shop).toEqual(shopOf(foreignLog()));
  const before = structuredClone(session.view.value.shop);
  expect(await restore(entries)).toEqual({ added: 0, here: entries.length, unplaced: 0 });
  expect(session.view.value.shop).toEqual(before);
  expect(await session.entries()).toEqual(entries);
});

test('what is saved to a file while a tap cannot be stored can be restored', async () => {
  const { session } = await openTestSession();
  await session.restore({ runs: [], entries: foreignEntries() });
  const unsaved = JSON.stringify({ setting: 'tap not saved', value: { act: 'a tap' } });
  const file = [...(await session.exportLines()), unsaved].join('\n');
  const reading = readBackup(new TextEncoder().encode(file));
  expect(reading).toMatchObject({ kind: 'read', entries: foreignEntries(), unreadable: [], cut: false });
});
