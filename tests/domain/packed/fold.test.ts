import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { foldTables } from '../../../src/domain/packed/fold.ts';
import { logColumns } from '../../../src/domain/packed/log-columns.ts';
import { emptyTables, type LogTables } from '../../../src/domain/packed/log-tables.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { clonedTabletInOneLog } from '../../support/cloned-tablet.ts';
import { histories, play } from '../../support/histories.ts';
import { packedRuns } from '../../support/run-makers.ts';

const folded = (events: readonly ShopEvent[]) =>
  foldTables(logColumns(packedRuns(chained(events)).map((run) => ({ run }))));

function tablesOf({ ledger, visits, flaws: { byReason, byOutcome }, partsUsed, stores }: Shop): LogTables {
  return { ledger, visits, flaws: { byReason, byOutcome }, partsUsed, stores };
}

describe('a log added up in columns', () => {
  test('gives the tables of the shop, whatever was undone, twice or back again, on one tablet or several', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        expect(folded(log)).toEqual(tablesOf(shopOf(log)));
      }),
      { numRuns: 150 },
    );
  });

  test('gives the same when a part of the log is missing: a void whose event is not there takes nothing away', () => {
    fc.assert(
      fc.property(histories, fc.nat(), fc.nat(2), (steps, cut, station) => {
        const { log, tablets } = play(steps);
        const own = ['tablet-a', 'tablet-c', 'tablet-e'][station % tablets.length];
        const all = chained(log);
        const ofStation = all.filter(({ event }) => event.station === own);
        const kept = all.filter(
          ({ event }) => event.station !== own || event.seq > cut % Math.max(1, ofStation.length),
        );
        const runs = packedRuns(kept).map((run) => ({ run }));
        expect(foldTables(logColumns(runs))).toEqual(
          tablesOf(shopOf(kept.map(({ event }) => event as ShopEvent))),
        );
      }),
      { numRuns: 100 },
    );
  });

  test('gives the tables of the demo shop in one pass', () => {
    const events = demoShop({ now: Date.UTC(2026, 2, 4, 14) });
    expect(folded(events)).toEqual(tablesOf(shopOf(events)));
  });

  test('of nothing is nothing', () => {
    expect(foldTables(logColumns([]))).toEqual(emptyTables());
  });

  test('tells the events of a cloned tablet apart, and what they took back', () => {
    const { runs, events } = clonedTabletInOneLog();
    expect(foldTables(logColumns(runs))).toEqual(tablesOf(shopOf(events)));
  });
});
