import { expect, test } from 'vitest';
import { shelfTable } from '../../../src/domain/export/shelf-table.ts';
import { nameOf } from '../../../src/words/names.ts';
import { lowered } from '../../support/a-shop.ts';
import { aFullShelf } from '../../support/full-shelf.ts';
import { variant } from '../../support/workshop.ts';

test('the table of the shelf says where finished pieces went and what they brought, and adds up', () => {
  const shop = aFullShelf();
  const tray = shop.tray('ash-copper', 2);
  shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered, pieces: 2 });
  const its = { variant: variant['ash-copper'], grade: 'first', shown: 0 } as const;
  shop.act({
    kind: 'move-on-shelf',
    to: 'listed',
    lines: [{ ...its, from: 'shelf', pieces: 6, price: null }],
  });
  shop.act({
    kind: 'move-on-shelf',
    to: 'sold',
    lines: [{ ...its, from: 'listed', pieces: 3, price: 3050 }],
  });
  shop.act({
    kind: 'move-on-shelf',
    to: 'sold',
    lines: [{ ...its, from: 'listed', pieces: 1, price: null }],
  });
  shop.act({ kind: 'move-on-shelf', to: 'kept', lines: [{ ...its, from: 'shelf', pieces: 1, price: null }] });
  const { columns, rows } = shelfTable(shop.shop, (fact) => nameOf(shop.shop.registers, fact));
  const records = rows.map((row) => Object.fromEntries(columns.map((column, at) => [column, row[at]])));
  // Seconds that are still in work are not on the shelf: the firsts are the only row.
  expect(records).toEqual([
    {
      variant: 'ash with copper',
      species: 'ash',
      grade: 'first',
      finished: 10,
      'on-shelf': 3,
      listed: 2,
      sold: 4,
      given: 0,
      kept: 1,
      'usual-price': 32,
      priced: 3,
      takings: 91.5,
      photos: 0,
    },
  ]);
});
