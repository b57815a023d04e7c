import type { StageId, TrayId } from '../log/ids.ts';
import { atStage, type Grade } from '../log/place.ts';
import { meanArrival, type Places, placesOf, type Standing } from '../shop/positions.ts';
import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';

/** Pieces of a tray at a stage by grade; `since` is their mean arrival in ms UTC, null when none wait. */
export interface AtStage {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly waiting: Readonly<Record<Grade, number>>;
  readonly held: Readonly<Record<Grade, number>>;
  readonly since: number | null;
}

/** What one tray has at each stage where it has anything, a count below zero included. */
export function stagesOfTray(shop: Shop, id: TrayId): readonly AtStage[] {
  const tray = shop.trays.get(id);
  if (!tray) return [];
  const byStage = new Map<StageId, Standing[]>();
  for (const standing of placesOf(shop.positions, id).values()) {
    const { place, pieces } = standing;
    if (!atStage(place) || pieces === 0) continue;
    byStage.set(place.stage, [...(byStage.get(place.stage) ?? []), standing]);
  }
  return [...byStage].map(([stage, standings]) => atOneStage({ tray, stage, standings }));
}

function atOneStage({
  tray,
  stage,
  standings,
}: Pick<AtStage, 'tray' | 'stage'> & { readonly standings: readonly Standing[] }): AtStage {
  return {
    tray,
    stage,
    waiting: {
      first: sum(standings, { at: 'waiting', grade: 'first' }),
      second: sum(standings, { at: 'waiting', grade: 'second' }),
    },
    held: {
      first: sum(standings, { at: 'held', grade: 'first' }),
      second: sum(standings, { at: 'held', grade: 'second' }),
    },
    since: meanArrival({
      place: { at: 'scrapped' },
      pieces: total(standings, 'pieces'),
      arrived: total(standings, 'arrived'),
    }),
  };
}

function sum(
  standings: readonly Standing[],
  { at, grade }: { at: 'waiting' | 'held'; grade: Grade },
): number {
  return standings
    .filter(({ place }) => place.at === at && place.grade === grade)
    .reduce((pieces, standing) => pieces + standing.pieces, 0);
}

function total(standings: readonly Standing[], field: 'pieces' | 'arrived'): number {
  return standings.filter(({ pieces }) => pieces > 0).reduce((whole, standing) => whole + standing[field], 0);
}

/** The trays with pieces at a stage, waiting longest first. */
export function traysAtStage(shop: Shop, stage: StageId): readonly AtStage[] {
  const found: AtStage[] = [];
  for (const [id, places] of shop.positions.working) {
    const tray = shop.trays.get(id);
    // Asked at every tap, of every tray in work: most have nothing there.
    const standings = tray ? standingsAt(places, stage) : [];
    if (tray && standings.length > 0) found.push(atOneStage({ tray, stage, standings }));
  }
  return found.sort(
    (a, b) =>
      (a.since ?? Number.POSITIVE_INFINITY) - (b.since ?? Number.POSITIVE_INFINITY) ||
      a.tray.made - b.tray.made,
  );
}

function standingsAt(places: Places, stage: StageId): readonly Standing[] {
  const found: Standing[] = [];
  for (const standing of places.values()) {
    const { place, pieces } = standing;
    if (pieces !== 0 && atStage(place) && place.stage === stage) found.push(standing);
  }
  return found;
}

/** A count below zero: more pieces were tapped off than the log had there. It asks for a recount. */
export interface CountToCheck {
  readonly tray: TrayRecord;
  readonly stage: StageId;
  readonly at: 'waiting' | 'held';
  readonly grade: Grade;
  readonly pieces: number;
}

export function countsToCheck(shop: Shop): readonly CountToCheck[] {
  const found: CountToCheck[] = [];
  for (const [id, places] of shop.positions.working) {
    const tray = shop.trays.get(id);
    for (const { place, pieces } of places.values()) {
      if (tray && pieces < 0 && atStage(place)) found.push({ tray, ...place, pieces });
    }
  }
  return found;
}
