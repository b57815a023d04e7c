import { expect, test } from 'vitest';
import { shopOf } from '../../src/domain/shop/shop.ts';
import { foreignEntries, foreignLog } from '../support/drafts.ts';
import { openTestSession } from '../support/open-test-session.ts';

test('a restore adds what is not there, shows it at once, and changes nothing the second time', async () => {
  const { session } = await openTestSession();
  const entries = foreignEntries();
  expect(await session.restore(entries.slice(0, 9))).toEqual({ added: 9, here: 0, unplaced: 0 });
  expect(await session.restore(entries)).toEqual({ added: entries.length - 9, here: 9, unplaced: 0 });
  expect(session.view.value.shop).toEqual(shopOf(foreignLog()));
  const before = structuredClone(session.view.value.shop);
  expect(await session.restore(entries)).toEqual({ added: 0, here: entries.length, unplaced: 0 });
  expect(session.view.value.shop).toEqual(before);
  expect(await session.entries()).toEqual(entries);
});
