import type { ReasonId, SpeciesId, StageId, TrayId } from '../log/ids.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapTable } from './tap-table.ts';

/** A tray at a stage, when its pieces first came to be judged. */
interface SeriesTray {
  readonly tray: TrayId;
  readonly code: string;
  readonly species: SpeciesId;
  /** When its first piece was judged there, ms UTC. */
  readonly from: number;
}

/** What a series counts: one reason, or scrap for whatever reason. */
type SeriesOf = { readonly kind: 'reason'; readonly reason: ReasonId } | { readonly kind: 'scrap' };

/** What tells a series from the others of its shop. */
export type SeriesName = Pick<SignalSeries, 'stage' | 'species' | 'of'>;

/** Trays at one stage in the order of their first judged piece, each with its pieces and how many were flawed. */
export interface SignalSeries {
  readonly stage: StageId;
  /** null for all woods of the stage: `tally.kinds` then tells them apart. */
  readonly species: SpeciesId | null;
  readonly of: SeriesOf;
  /** Flawed and all pieces by tray, of first visits alone; as `signalsOf` takes it. */
  readonly tally: {
    readonly counts: readonly number[];
    readonly sizes: readonly number[];
    readonly kinds?: readonly string[];
  };
  readonly trays: readonly SeriesTray[];
}

/** A signal that was answered: what was before that moment (ms UTC) is no news in its series. */
export interface AnsweredSignal extends SeriesName {
  readonly since: number;
}

export interface SeriesQuestion {
  readonly filter?: TapFilter | undefined;
  readonly answered?: readonly AnsweredSignal[] | undefined;
  /** The newest trays of a series that hold at most so many pieces; 3000 when left out. */
  readonly mostPieces?: number | undefined;
}

/**
 * The series in which a rate may have changed: per stage × wood one for each reason that it has ever had there and one
 * for scrap, and the same per stage over all its woods. Only first visits count, so that a piece which was sent back is
 * in each series once; a piece that was scrapped when it came again is in none.
 */
export function signalSeries(
  table: TapTable,
  { filter = {}, answered = [], mostPieces = 3000 }: SeriesQuestion = {},
): readonly SignalSeries[] {
  const byStage = stageTrays(table, filter);
  const since = new Map(answered.map((each) => [nameOfSeries(each), each.since]));
  return [...byStage]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([stage, trays]) => {
      const woods = [...new Set(trays.map(({ species }) => species))].sort();
      // With one wood the series of the stage is the series of the wood.
      const asked = woods.length > 1 ? [null, ...woods] : woods;
      return asked.flatMap((species) => {
        const ofSpecies = species === null ? trays : trays.filter((each) => each.species === species);
        const reasons = [...new Set(ofSpecies.flatMap(({ byReason }) => [...byReason.keys()]))].sort();
        const all: readonly SeriesOf[] = [
          { kind: 'scrap' },
          ...reasons.map((reason) => ({ kind: 'reason', reason }) as const),
        ];
        return all.map((of) => {
          const from = since.get(nameOfSeries({ stage, species, of })) ?? Number.NEGATIVE_INFINITY;
          const newest = newestOf(
            ofSpecies.filter((each) => each.from >= from),
            mostPieces,
          );
          return seriesOf(newest, { stage, species, of });
        });
      });
    });
}

/** The series of a name with all its pieces; null where the log has none. */
export function seriesNamed(table: TapTable, name: SeriesName): SignalSeries | null {
  const ofStage = signalSeries(table, {
    filter: { stage: name.stage },
    mostPieces: Number.POSITIVE_INFINITY,
  });
  return ofStage.find((each) => nameOfSeries(each) === nameOfSeries(name)) ?? null;
}

interface StageTray extends SeriesTray {
  size: number;
  scrapped: number;
  readonly byReason: Map<ReasonId, number>;
}

/** The trays of each stage in the order in which their first piece was judged. */
function stageTrays(table: TapTable, filter: TapFilter): ReadonlyMap<StageId, readonly StageTray[]> {
  const { kind, tray, wall } = table.columns;
  const isWanted = tapFilter(table, filter);
  const byStage = new Map<StageId, Map<TrayId, StageTray>>();
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    if (what?.kind !== 'visit' || !of || !isWanted(row)) continue;
    const pieces = what.pieces - what.again;
    if (pieces <= 0) continue;
    const trays = byStage.get(what.stage) ?? new Map<TrayId, StageTray>();
    byStage.set(what.stage, trays);
    const found = trays.get(of.tray) ?? newTray(of, wall[row] ?? 0);
    trays.set(of.tray, found);
    found.size += pieces;
    if (what.flaw?.outcome === 'scrapped') found.scrapped += pieces;
    for (const reason of what.flaw?.reasons ?? [])
      found.byReason.set(reason, (found.byReason.get(reason) ?? 0) + pieces);
  }
  return new Map([...byStage].map(([stage, trays]) => [stage, [...trays.values()]]));
}

function newTray({ tray, code, species }: Omit<SeriesTray, 'from'>, from: number): StageTray {
  return { tray, code, species, from, size: 0, scrapped: 0, byReason: new Map() };
}

function newestOf(trays: readonly StageTray[], mostPieces: number): readonly StageTray[] {
  let pieces = 0;
  const before = trays.findLastIndex(({ size }) => {
    pieces += size;
    return pieces > mostPieces;
  });
  return trays.slice(before + 1);
}

function seriesOf(trays: readonly StageTray[], { stage, species, of }: SeriesName): SignalSeries {
  const count = (each: StageTray) =>
    of.kind === 'scrap' ? each.scrapped : (each.byReason.get(of.reason) ?? 0);
  return {
    ...{ stage, species, of },
    tally: {
      counts: trays.map(count),
      sizes: trays.map(({ size }) => size),
      ...(species === null && { kinds: trays.map((each) => each.species) }),
    },
    trays: trays.map(({ tray, code, species: wood, from }) => ({ tray, code, species: wood, from })),
  };
}

/** Tells series apart; ids hold no bar. */
export function nameOfSeries({ stage, species, of }: SeriesName): string {
  return `${stage}|${species ?? ''}|${of.kind === 'scrap' ? '' : of.reason}`;
}
