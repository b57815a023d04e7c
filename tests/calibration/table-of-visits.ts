import * as v from 'valibot';
import {
  batchId,
  reasonId,
  shopDayText,
  speciesId,
  stageId,
  stationId,
  trayId,
  variantId,
} from '../../src/domain/log/ids.ts';
import type { Flaw } from '../../src/domain/study/tap-kind.ts';
import { inOrder } from '../../src/domain/study/tap-order.ts';
import { tapRows } from '../../src/domain/study/tap-rows.ts';
import type { TapTable } from '../../src/domain/study/tap-table.ts';
import { reasons, stages, type TrayVisit, woods } from './simulated-benches.ts';

const named = <Id>(schema: v.GenericSchema<string, Id>, name: string) => v.parse(schema, name);
const some = <Id>(schema: v.GenericSchema<string, Id>, name: string, many: number) =>
  Array.from({ length: many }, (_, at) => named(schema, `${name}-${at}`));

/** How long a tray takes: visits are told in trays, taps in ms. */
export const trayMs = 3_600_000;

export const stageIds = some(stageId, 'stage', stages);
const woodIds = some(speciesId, 'wood', woods);
const reasonIds = some(reasonId, 'reason', reasons);
const about = { variant: named(variantId, 'variant'), batch: named(batchId, 'batch'), code: '' };

/** The taps of simulated visits as the app keeps them: what each screen, and the list of signals, is reckoned from. */
export function tableOf(visits: readonly TrayVisit[]): TapTable {
  const rows = tapRows(visits.length * (1 + 2 * reasons));
  const { indexes } = rows;
  const always = {
    day: indexes.day(named(shopDayText, '2026-01-05')),
    person: indexes.person(null),
    station: indexes.station(named(stationId, 'station')),
    ...{ tick: 0, elapsed: -1 },
  };
  for (const visit of visits.toSorted((a, b) => a.at - b.at)) {
    const stage = stageIds[visit.stage];
    const species = woodIds[visit.wood];
    if (stage === undefined || species === undefined) throw new Error('a visit of no stage or no wood');
    const tray = indexes.tray({ ...about, tray: named(trayId, `tray-${visit.tray}`), species });
    const tap = (pieces: number, flaw: Flaw | null) => {
      if (pieces === 0) return;
      const kind = indexes.kind({
        ...{ kind: 'visit', stage, pieces, again: 0, flaw },
        ...{ trials: [], doubtful: false },
      });
      rows.add({ ...always, kind, tray, seq: rows.length(), wall: Math.round(visit.at * trayMs) });
    };
    for (const [at, { mended, scrapped }] of visit.flawed.entries()) {
      const of = reasonIds.slice(at, at + 1);
      tap(scrapped, { outcome: 'scrapped', to: null, reasons: of, saved: [] });
      tap(mended, { outcome: 'mended', to: null, reasons: of, saved: [] });
    }
    tap(visit.passed, null);
  }
  return inOrder(rows);
}
