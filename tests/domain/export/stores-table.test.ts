import { expect, test } from 'vitest';
import { storesTable } from '../../../src/domain/export/stores-table.ts';
import { tapsTable } from '../../../src/domain/export/taps-table.ts';
import { eventWords } from '../../../src/words/event-words.ts';
import { nameOf } from '../../../src/words/names.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { part, partFacts } from '../../support/workshop.ts';

/** 100 cores for 45.00, six pieces glued up with two each, two of them scrapped and saved; three cleaned, one lost over it. */
function stocked() {
  const shop = aWorkshop();
  for (const set of partFacts) shop.set(set);
  const value = { name: 'Core', sort: 'core', lowMark: 90, retired: false } as const;
  shop.set({ register: 'part', id: part.core, value });
  const lines = [
    { part: part.core, pieces: 100, cost: 4500 },
    { part: part['ash-blank'], pieces: 40, cost: null },
  ];
  shop.act({ kind: 'receive-parts', parts: lines, note: 'box 7' });
  const tray = shop.tray('ash-copper', 6);
  for (const at of ['bore', 'glue'] as const) shop.pass(tray, at, { pieces: 6 });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped(part.core), pieces: 2 });
  shop.act({ kind: 'clean-parts', part: part.core, back: 2, lost: 1, shown: 4 });
  shop.act({ kind: 'count-parts', part: part.core, heap: 'shelf', counted: 87, why: 'lost', note: '' });
  return shop;
}

const records = ({ columns, rows }: ReturnType<typeof storesTable>) =>
  rows.map((row) => Object.fromEntries(columns.map((column, at) => [column, row[at]])));

test('the table of the stores has of each part where its pieces came from and went, and adds up', () => {
  const table = records(storesTable(stocked().shop));
  expect(table.find(({ part: name }) => name === 'Core')).toEqual({
    part: 'Core',
    sort: 'core',
    told: 'yes',
    'on-hand': 87,
    allotted: 0,
    free: 87,
    'low-mark': 90,
    'to-clean': 1,
    received: 100,
    counted: -3,
    cleaned: 2,
    'lost-parts': 1,
    used: 12,
    'piece-cost': 0.45,
    worth: 39.15,
    'to-order': 3,
  });
  for (const row of table)
    expect(row['on-hand'], `${row.part}`).toBe(
      Number(row.received) + Number(row.counted) + Number(row.cleaned) - Number(row.used),
    );
});

test('the table of taps and the words of the log tell of deliveries, cleaning and counts', () => {
  const { shop, log } = stocked();
  const { columns, rows } = tapsTable(log, {
    shop,
    nameOf: (fact) => nameOf(shop.registers, fact),
    say: (event) => eventWords(event, shop.registers),
  });
  const of = (name: (typeof columns)[number]) => columns.indexOf(name);
  const told = rows
    .filter((row) => String(row[of('kind')]).startsWith('parts-'))
    .map((row) => [
      row[of('said')],
      row[of('parts')],
      row[of('lost-parts')],
      row[of('heap')],
      row[of('pieces')],
    ]);
  expect(told).toEqual([
    ['Received: 100 Core, 40 ash-blank', 'Core 100; ash-blank 40', null, null, null],
    ['Core cleaned: 2 back to stores, 1 lost', 'Core 2', 1, null, null],
    ['Core counted: 87, −3 (lost)', 'Core -3', null, 'shelf', null],
  ]);
});
