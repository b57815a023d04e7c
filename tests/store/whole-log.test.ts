import { expect, test } from 'vitest';
import { wholeParcel } from '../../src/store/reads-of-sealed.ts';
import { sealOldRecords } from '../../src/store/sealing.ts';
import { openShopDatabase } from '../../src/store/shop-database.ts';
import type { ShopDatabase } from '../../src/store/shop-schema.ts';
import { spellDraft } from '../support/drafts.ts';
import { freshName, openTestLog, quietNews } from '../support/log-makers.ts';

/** The database, in which old records are sealed before the first piece of young ones behind the first is read. */
function sealedMeanwhile(db: ShopDatabase): ShopDatabase {
  let isSealed = false;
  const getAll = async (...asked: readonly unknown[]): Promise<unknown> => {
    if (asked[0] === 'events' && !isSealed) {
      isSealed = true;
      await sealOldRecords(db, { young: 100, together: 100 });
    }
    return Reflect.apply(db.getAll, db, asked);
  };
  return new Proxy(db, {
    get: (target, name) => (name === 'getAll' ? getAll : bound(target, name)),
  });
}

function bound(target: ShopDatabase, name: string | symbol): unknown {
  const value: unknown = Reflect.get(target, name, target);
  return typeof value === 'function' ? value.bind(target) : value;
}

test('a log whose records are sealed while it is read has each entry once', async () => {
  const name = freshName();
  const log = await openTestLog(name);
  const taps = 1500;
  await log.append({ act: 'many', drafts: Array.from({ length: taps }, () => spellDraft('turn')), now: 0 });
  const db = await openShopDatabase(name, quietNews);
  const { runs, entries } = await wholeParcel(sealedMeanwhile(db));
  db.close();
  const numbers = [
    ...runs.flatMap(({ first, entries: n }) => Array.from({ length: n }, (_, at) => first + at)),
    ...entries.map(({ event }) => event.seq),
  ];
  expect(runs.length).toBeGreaterThan(0);
  expect(numbers.toSorted((a, b) => a - b)).toEqual(Array.from({ length: taps }, (_, at) => at + 1));
});
