import { openDB } from 'idb';
import { expect, test } from 'vitest';
import { areInOrder } from '../../src/app/books.ts';
import { shopOf } from '../../src/domain/shop/shop.ts';
import { foreignEntries, foreignLog } from '../support/drafts.ts';
import { freshName, openTestLog, spoilRecord } from '../support/log-makers.ts';
import { openTestSession } from '../support/open-test-session.ts';

async function shopWithBooks() {
  const name = freshName();
  const { session } = await openTestSession({ log: await openTestLog(name) });
  await session.restore({ runs: [], entries: foreignEntries() });
  return { name, session };
}

test('books in order are said to be so', async () => {
  const { session } = await shopWithBooks();
  const report = await session.checkBooks();
  expect(areInOrder(report)).toBe(true);
  expect([report.entries, report.stations]).toEqual([foreignLog().length, 1]);
});

test('a figure that the log does not amount to is found, and the rebuilt shop has it right', async () => {
  const { session, name } = await shopWithBooks();
  for (const key of session.view.value.shop.ledger.scrapped.keys())
    session.view.value.shop.ledger.scrapped.set(key, 12);
  const report = await session.checkBooks();
  expect([report.differing, areInOrder(report)]).toEqual([['ledger'], false]);
  expect(report.rebuilt).toEqual(shopOf(foreignLog()));
  await session.keepSnapshotOf(report.rebuilt);
  await session.close();
  const again = await openTestSession({ log: await openTestLog(name) });
  expect(again.session.view.value.shop).toEqual(shopOf(foreignLog()));
});

test('a damaged record and a missing one are found', async () => {
  const { session, name } = await shopWithBooks();
  await spoilRecord(name, ['station-z', 9], (record) => ({ ...record, event: null }));
  const db = await openDB(name);
  await db.delete('events', ['station-z', 4]);
  db.close();
  const { damaged, gaps } = await session.checkBooks();
  expect([damaged, gaps]).toEqual([
    1,
    [
      { station: 'station-z', from: 4, to: 4 },
      { station: 'station-z', from: 9, to: 9 },
    ],
  ]);
});

test('taps go on while the books are checked, and none comes between log and figures', async () => {
  const { session } = await shopWithBooks();
  const shop = { name: 'Ours', zone: 'Europe/London', dayStartHour: 4 };
  const check = session.checkBooks();
  const tap = session.act({ kind: 'set', set: { register: 'shop', id: 'shop', value: shop } });
  expect(areInOrder(await check)).toBe(true);
  expect((await tap).kind).toBe('saved');
});
