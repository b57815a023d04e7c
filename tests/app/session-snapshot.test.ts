import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shopFormat, shopOf } from '../../src/domain/shop/shop.ts';
import { foreignEntries, foreignLog, newerEntry } from '../support/drafts.ts';
import { freshName, openTestLog, spoilRecord } from '../support/log-makers.ts';
import { openTestSession } from '../support/open-test-session.ts';

const log = foreignLog();
const entries = foreignEntries();
const now = Date.UTC(2026, 2, 2, 9);

test('a snapshot and the tail after it make the same shop as the whole log', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.nat({ max: log.length }),
      fc.shuffledSubarray([...entries], { minLength: log.length }),
      async (cut, order) => {
        const name = freshName();
        const store = await openTestLog(name);
        await store.merge({ entries: order.slice(0, cut), now });
        const first = await openTestSession({ log: store });
        await first.session.keepSnapshot();
        await store.merge({ entries: order.slice(cut), now });
        await first.session.close();
        const again = await openTestSession({ log: await openTestLog(name) });
        await again.session.refresh();
        expect(again.session.view.value.shop).toEqual(shopOf(log));
        await again.session.close();
      },
    ),
    { numRuns: 25 },
  );
});

test.each([
  ['of another format', { format: shopFormat + 1, shop: {} }],
  ['that is no shop', { format: shopFormat, shop: { seen: 'all of it' } }],
  ['that is nothing', { format: shopFormat, shop: null }],
])('a snapshot %s is dropped and the log replayed', async (_, snapshot) => {
  const store = await openTestLog();
  await store.merge({ entries, now });
  await store.saveSnapshot({ over: null, make: () => ({ ...snapshot, pages: new Map() }) });
  const { session } = await openTestSession({ log: store });
  expect(session.view.value.shop).toEqual(shopOf(log));
});

test('entries that cannot be counted are still told of when the shop is opened from a snapshot', async () => {
  const name = freshName();
  const store = await openTestLog(name);
  await store.merge({ entries: [...entries, newerEntry], now });
  await spoilRecord(name, ['station-z', log.length], (record) => ({ ...record, event: { stamp: null } }));
  const { session } = await openTestSession({ log: store });
  expect(session.view.value.uncounted).toBe(2);
  await session.keepSnapshot();
  await session.close();
  const again = await openTestSession({ log: await openTestLog(name) });
  expect(again.session.view.value.uncounted).toBe(2);
});
