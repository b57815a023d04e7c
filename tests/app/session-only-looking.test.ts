import { expect, test } from 'vitest';
import { openSession } from '../../src/app/session.ts';
import { foreignEntries } from '../support/drafts.ts';
import { handClock } from '../support/hand-clock.ts';
import { openTestLog } from '../support/log-makers.ts';
import { noFeed } from '../support/open-test-session.ts';

test('a shop that is only looked at shows its figures and refuses every tap', async () => {
  const log = await openTestLog();
  await log.merge({ entries: foreignEntries(), now: 1 });
  const { clock, timer } = handClock();
  const session = await openSession({
    ...{ log, clock, timer, feed: noFeed, built: 0, newId: () => 'id' },
    onlyLooking: true,
  });
  expect(session.view.value.shop.trays.size).toBe(2);
  const before = await log.entries();
  const refused = { kind: 'refused', problem: { kind: 'only-looking' } };
  const shop = { name: 'Another', zone: 'Europe/London', dayStartHour: 4 };
  expect(await session.act({ kind: 'set', set: { register: 'shop', id: 'shop', value: shop } })).toEqual(
    refused,
  );
  expect(await session.undoLast()).toEqual(refused);
  expect(await log.entries()).toEqual(before);
});
