import { chained } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { tapTable } from '../../src/domain/study/log-of-taps.ts';
import type { StudyRoutes } from '../../src/domain/study/study-routes.ts';
import { type Tap, type TapTable, tapAt } from '../../src/domain/study/tap-table.ts';
import { packedRuns } from './run-makers.ts';
import { batch, routeStages, stage } from './workshop.ts';

/** The table of single events. */
export const studied = (events: readonly ShopEvent[]) => tapTable({ runs: [], events });

/** The table of the same events, packed in runs. */
export const studiedPacked = (events: readonly ShopEvent[]) =>
  tapTable({ runs: packedRuns(chained(events)).map((run) => ({ run })), events: [] });

export function tapsIn(table: TapTable): readonly Tap[] {
  return Array.from({ length: table.length }, (_, row) => {
    const tap = tapAt(table, row);
    if (!tap) throw new Error(`the table has no row ${row}`);
    return tap;
  });
}

/** The event with a time since the tap before, made up from its number: sometimes none, sometimes that of a break. */
export function paced<E extends ShopEvent>(event: E): E {
  const own =
    'elapsed' in event ? { elapsed: event.seq % 5 === 0 ? null : (event.seq * 104_729) % 1_000_000 } : {};
  return { ...event, ...own, ...(event.kind === 'voided' && { event: paced(event.event) }) };
}

/** The routes of the test workshop. */
export const testRoutes: StudyRoutes = {
  stages: routeStages.map((name) => stage[name]),
  byBatch: new Map([[batch.autumn, [stage.turn, stage.sand]]]),
};
