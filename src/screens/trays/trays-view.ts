import type { Spot } from '../../domain/command/command.ts';
import type { StageId, TrayId } from '../../domain/log/ids.ts';
import type { Grade } from '../../domain/log/place.ts';
import { type AtStage, stagesOfTray } from '../../domain/rollup/waiting.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import { routeOfBatch } from '../../domain/route/route.ts';
import { placesOf } from '../../domain/shop/positions.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';
import { parseTrayCode, type TrayCode } from '../../domain/tray/tray-code.ts';

/** A tray with the stages where it has anything, in route order. */
export interface TrayRow {
  readonly tray: TrayRecord;
  readonly stages: readonly AtStage[];
}

/** Trays with pieces in work, and those without; the oldest first. */
export function traysInWork(shop: Shop): {
  readonly live: readonly TrayRow[];
  readonly done: readonly TrayRow[];
} {
  const rows = [...shop.trays.values()]
    .toSorted((a, b) => a.made - b.made || a.code.localeCompare(b.code, 'en', { numeric: true }))
    .map((tray) => trayRow(shop, tray));
  return {
    live: rows.filter(({ stages }) => stages.length > 0),
    done: rows.filter(({ stages }) => stages.length === 0),
  };
}

export function trayRow(shop: Shop, tray: TrayRecord): TrayRow {
  const order = liveStages(shop.registers);
  const stages = stagesOfTray(shop, tray.tray).toSorted(
    (a, b) => order.indexOf(a.stage) - order.indexOf(b.stage),
  );
  return { tray, stages };
}

/** The codes of trays in work, for finding what was meant by a mistyped one. */
export function liveCodes(rows: readonly TrayRow[]): readonly TrayCode[] {
  return rows.map(({ tray }) => parseTrayCode(tray.code)).filter((code) => code !== undefined);
}

/** One count of a tray that a person can speak of: a stage, waiting or held, a grade. */
export type TraySpot = Spot;

const grades: readonly Grade[] = ['first', 'second'];

/** Every count of a tray that is not zero, in route order. */
export function spotsOf({ tray, stages }: TrayRow): readonly TraySpot[] {
  return stages.flatMap(({ stage, waiting, held }) =>
    grades.flatMap((grade) =>
      (['waiting', 'held'] as const).flatMap((at) => {
        const shown = (at === 'waiting' ? waiting : held)[grade];
        return shown === 0 ? [] : [{ tray: tray.tray, stage, at, grade, shown }];
      }),
    ),
  );
}

export function spotKey({ stage, at, grade }: TraySpot): string {
  return `${stage}-${at}-${grade}`;
}

/** Pieces of a tray that are out of work. */
export interface OutOfWork {
  readonly first: number;
  readonly second: number;
  readonly scrapped: number;
}

export function outOfWork(shop: Shop, tray: TrayId): OutOfWork {
  const out = { first: 0, second: 0, scrapped: 0 };
  for (const { place, pieces } of placesOf(shop.positions, tray).values()) {
    if (place.at === 'finished') out[place.grade] += pieces;
    if (place.at === 'scrapped') out.scrapped += pieces;
  }
  return out;
}

/** The stage that a photo of a tray shows: the furthest at which it has pieces, or the last of its route when it is done. */
export function stageToShow(shop: Shop, tray: TrayRecord): StageId | undefined {
  const furthest = trayRow(shop, tray).stages.at(-1)?.stage;
  return furthest ?? routeOfBatch(shop.registers, tray.batch)?.at(-1);
}

/** Trays in work that a tray can be joined to: of its variant and batch. */
export function joinTargets(
  rows: readonly TrayRow[],
  { tray, variant, batch }: TrayRecord,
): readonly TrayRow[] {
  return rows.filter(
    (row) => row.tray.tray !== tray && row.tray.variant === variant && row.tray.batch === batch,
  );
}
