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
import type { TapKind } from '../../src/domain/study/tap-kind.ts';
import { inOrder } from '../../src/domain/study/tap-order.ts';
import { tapRows } from '../../src/domain/study/tap-rows.ts';
import type { TapTable } from '../../src/domain/study/tap-table.ts';
import type { Spot, Tapped } from './work-off.ts';

const named = <Id>(schema: v.GenericSchema<string, Id>, name: string) => v.parse(schema, name);
export const woodNamed = (wood: number) => named(speciesId, `wood-${wood}`);
export const variantNamed = (wood: number) => named(variantId, `variant-${wood}`);
export const stageNamed = (stage: number) => named(stageId, `stage-${stage}`);
export const dayOf = (at: number) => named(shopDayText, new Date(at).toISOString().slice(0, 10));
const [batch, reason] = [named(batchId, 'batch'), named(reasonId, 'reason')];

/** The taps of a worked shop up to a moment, as the app keeps them. */
export function tapsOfShop(taps: readonly Tapped[], until: number): TapTable {
  const seen = taps.filter(({ at }) => at <= until).sort((a, b) => a.at - b.at);
  const rows = tapRows(2 * seen.length);
  const { indexes } = rows;
  for (const tap of seen) {
    const always = {
      day: indexes.day(dayOf(tap.at)),
      person: indexes.person(null),
      station: indexes.station(named(stationId, `station-${tap.person}`)),
      ...{ wall: Math.round(tap.at), tick: 0 },
    };
    const tray = indexes.tray({
      ...{
        tray: named(trayId, `tray-${tap.tray}`),
        species: woodNamed(tap.wood),
        variant: variantNamed(tap.wood),
      },
      ...{ batch, code: '' },
    });
    if (tap.begins)
      rows.add({ ...always, kind: indexes.kind('begun'), tray: -1, seq: rows.length(), elapsed: -1 });
    rows.add({
      ...always,
      kind: indexes.kind(kindOf(tap)),
      tray,
      seq: rows.length(),
      elapsed: Math.round(tap.elapsed),
    });
  }
  return inOrder(rows);
}

function kindOf({ from, to, stage, pieces }: Tapped): TapKind {
  const about = { stage: stageNamed(stage), pieces, doubtful: false };
  if (!from) return { kind: 'loaded', ...about };
  const outcome = outcomeOf(from, to);
  const isDecided = from.redo === null ? outcome !== 'sent-back' : to.redo === null;
  const end = { mended: 'on', second: 'lowered', 'sent-back': 'back', scrapped: 'scrapped' } as const;
  return {
    ...{ kind: 'visit', ...about, again: from.redo === null ? 0 : pieces },
    flaw:
      outcome === null
        ? null
        : {
            outcome,
            to: outcome === 'sent-back' ? stageNamed(to.stage ?? 0) : null,
            reasons: [reason],
            saved: [],
          },
    trials: [
      {
        stage: stageNamed(from.redo ?? stage),
        pieces,
        grade: from.second ? 'second' : 'first',
        end: outcome === null ? 'on' : end[outcome],
        over: outcome === 'scrapped' || isDecided,
      },
    ],
  };
}

function outcomeOf(from: Spot, to: Spot): 'second' | 'sent-back' | 'scrapped' | null {
  if (to.stage === null) return 'scrapped';
  if (to.stage < (from.stage ?? 0)) return 'sent-back';
  return to.second && !from.second ? 'second' : null;
}
