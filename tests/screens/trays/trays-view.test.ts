import { expect, test } from 'vitest';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { historyEntries } from '../../../src/screens/parts/history-entries.ts';
import {
  joinTargets,
  liveCodes,
  outOfWork,
  spotKey,
  spotsOf,
  trayRow,
  traysInWork,
} from '../../../src/screens/trays/trays-view.ts';
import { aWorkshop, lowered, scrapped, type TestShop } from '../../support/a-shop.ts';

function rowOf({ shop }: TestShop, id: TrayId) {
  const tray = shop.trays.get(id);
  if (!tray) throw new Error('the tray is in the shop');
  return trayRow(shop, tray);
}

test('a tray whose pieces are all scrapped is no tray in work, and its code is not offered', () => {
  const shop = aWorkshop();
  const gone = shop.tray('ash-copper', 1);
  const live = shop.tray('ash-copper', 3);
  shop.flaw(gone, 'bore', { why: 'blown', outcome: scrapped() });
  const rows = traysInWork(shop.shop);
  expect(rows.live.map(({ tray }) => tray.tray)).toEqual([live]);
  expect(rows.done.map(({ tray }) => tray.tray)).toEqual([gone]);
  expect(liveCodes(rows.live)).toEqual([shop.shop.trays.get(live)?.code]);
});

test('every count of a tray can be spoken of, in the order of the route, below zero too', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 4);
  shop.flaw(tray, 'bore', { why: 'blown', outcome: lowered });
  shop.pass(tray, 'bore', { pieces: 3 });
  shop.pass(tray, 'bore', { shown: 1 });
  shop.load(tray, 'glue', { pieces: 2 });
  expect(spotsOf(rowOf(shop, tray)).map((spot) => [spotKey(spot), spot.shown])).toEqual([
    ['bore-waiting-first', -1],
    ['glue-waiting-first', 2],
    ['glue-held-first', 2],
    ['glue-waiting-second', 1],
  ]);
});

test('what is out of work is counted by grade', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 3, 'autumn');
  shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped() });
  shop.pass(tray, 'turn');
  shop.pass(tray, 'sand');
  shop.pass(tray, 'sand', { grade: 'second' });
  expect(outOfWork(shop.shop, tray)).toEqual({ first: 1, second: 1, scrapped: 1 });
});

test('only trays of the same variant and batch are offered to join', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 3);
  const twin = shop.tray('ash-copper', 2);
  shop.tray('plum-copper', 2);
  shop.tray('ash-copper', 2, 'autumn');
  const { live } = traysInWork(shop.shop);
  expect(joinTargets(live, rowOf(shop, tray).tray).map((row) => row.tray.tray)).toEqual([twin]);
});

test('history stands newest first; what was taken back is marked and can be put back by its undo alone', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 3);
  const slip = shop.pass(tray, 'bore');
  shop.undo(slip);
  const events = shop.log.filter((event) => event.kind !== 'set-up');
  expect(
    historyEntries(shop.shop, events).map(({ event, inForce, voidable }) => [
      event.kind,
      inForce,
      voidable !== null,
    ]),
  ).toEqual([
    ['voided', true, true],
    ['passed', false, false],
    ['tray-made', true, true],
  ]);
});
