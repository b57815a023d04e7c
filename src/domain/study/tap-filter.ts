import type { BatchId, PersonId, ShopDay, SpeciesId, StageId } from '../log/ids.ts';
import type { TapTable } from './tap-table.ts';

/** Which taps are looked at: those for which all that is given here holds. Nothing given: all of them. */
export interface TapFilter {
  /** First and last shop day. */
  readonly from?: ShopDay;
  readonly to?: ShopDay;
  /** null for taps of nobody in particular. */
  readonly person?: PersonId | null;
  readonly batch?: BatchId;
  readonly stage?: StageId;
  readonly species?: SpeciesId;
  /** Moments by the stamp, ms UTC: not before `since`, and before `before`. A tool was set up between the two. */
  readonly since?: number;
  readonly before?: number;
}

/** Tells of each row whether a filter lets it through. What is not about a tray is of no batch and no species. */
export function tapFilter(table: TapTable, filter: TapFilter): (row: number) => boolean {
  const { from, to, person, batch, stage, species, since, before } = filter;
  const { columns } = table;
  const days = flags(
    table.days,
    (day) => (from === undefined || day >= from) && (to === undefined || day <= to),
  );
  const persons = flags(table.persons, (each) => person === undefined || each === person);
  const kinds = flags(table.kinds, (kind) => stage === undefined || kind.stage === stage);
  const isAnyTray = batch === undefined && species === undefined;
  const trays = flags(
    table.trays,
    (of) => (batch === undefined || of.batch === batch) && (species === undefined || of.species === species),
  );
  return (row) => {
    const wall = columns.wall[row] ?? 0;
    return (
      days[columns.day[row] ?? -1] === 1 &&
      persons[columns.person[row] ?? -1] === 1 &&
      kinds[columns.kind[row] ?? -1] === 1 &&
      (isAnyTray || trays[columns.tray[row] ?? -1] === 1) &&
      (since === undefined || wall >= since) &&
      (before === undefined || wall < before)
    );
  };
}

function flags<Item>(items: readonly Item[], is: (item: Item) => boolean): Uint8Array {
  return Uint8Array.from(items, (item) => (is(item) ? 1 : 0));
}
