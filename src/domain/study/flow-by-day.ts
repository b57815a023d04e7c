import type { BatchId, ShopDay, StageId } from '../log/ids.ts';
import type { Grade } from '../log/place.ts';
import { type StudyRoutes, stagesOf } from './study-routes.ts';
import { type TapFilter, tapFilter } from './tap-filter.ts';
import type { TapKind } from './tap-kind.ts';
import type { TapTable } from './tap-table.ts';

/** What was where at the end of each day on which something was judged. All counts are pieces. */
export interface FlowByDay {
  /** In order, the newest ones. */
  readonly days: readonly ShopDay[];
  /**
   * Stages in the order of the route without the first of each route, whose pieces no tap has told of: `standing` is what
   * has come through the stage before and was not through with this one, on each of `days`. What was sent back stands at
   * the stage that sent it.
   */
  readonly stages: readonly { readonly stage: StageId; readonly standing: readonly number[] }[];
  /** Since the beginning of the log, on each of `days`. */
  readonly finished: Readonly<Record<Grade, readonly number[]>>;
  readonly scrapped: readonly number[];
  /** The last two as they were before the first of `days`. */
  readonly before: { readonly finished: number; readonly scrapped: number };
}

/** A year of days is as many as a screen has room for. */
const mostDays = 366;

type Place = StageId | Grade | 'scrapped';
type Sums = Map<Place, number>;

/**
 * Adds up trials that are over (`tap-kind.ts`): each takes its pieces from its stage and gives them to the next one of
 * their route, as the routes are now. Filters of batch, wood and days are heeded; days only choose what is shown, since
 * what stands somewhere came there before. Recounts are no taps at a stage and count in nothing here.
 */
export function flowByDay(
  table: TapTable,
  { routes, filter = {} }: { readonly routes: StudyRoutes; readonly filter?: TapFilter | undefined },
): FlowByDay {
  const { batch, species, from, to } = filter;
  const isWanted = tapFilter(table, { ...(batch && { batch }), ...(species && { species }) });
  const byDay = new Map<number, Sums>();
  const batches = new Set<BatchId>();
  const { kind, tray, day } = table.columns;
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[kind[row] ?? -1];
    const of = table.trays[tray[row] ?? -1];
    if (what?.kind !== 'visit' || !of || !isWanted(row)) continue;
    batches.add(of.batch);
    const on = day[row] ?? -1;
    const sums = byDay.get(on) ?? new Map<Place, number>();
    byDay.set(on, sums);
    addTrials(sums, what, routes.byBatch.get(of.batch) ?? routes.stages);
  }
  const judged = [...byDay]
    .flatMap(([index, sums]) => {
      const on = table.days[index];
      return on === undefined ? [] : [{ on, sums }];
    })
    .sort((a, b) => (a.on < b.on ? -1 : 1));
  const shown = judged
    .filter(({ on }) => (from === undefined || on >= from) && (to === undefined || on <= to))
    .slice(-mostDays);
  const first = shown[0]?.on;
  const begun: Sums = new Map();
  for (const { on, sums } of judged) if (first !== undefined && on < first) addSums(begun, sums);
  return { ...linesOf(shown, begun, stagesOf(routes, batches)), before: endsOf(begun) };
}

function addTrials(
  sums: Sums,
  { trials }: Extract<TapKind, { kind: 'visit' }>,
  route: readonly StageId[],
): void {
  for (const { stage, pieces, grade, end, over } of trials) {
    const place = route.indexOf(stage);
    if (!over || place < 0) continue;
    if (place > 0) add(sums, stage, -pieces);
    if (end === 'scrapped') add(sums, 'scrapped', pieces);
    else add(sums, route[place + 1] ?? (end === 'lowered' ? 'second' : grade), pieces);
  }
}

function linesOf(
  shown: readonly { readonly on: ShopDay; readonly sums: Sums }[],
  begun: Sums,
  stages: readonly StageId[],
): Omit<FlowByDay, 'before'> {
  const running: Sums = new Map(begun);
  const days = shown.map(({ on, sums }) => {
    addSums(running, sums);
    return { on, at: new Map(running) };
  });
  const line = (place: Place) => days.map(({ at }) => at.get(place) ?? 0);
  return {
    days: days.map(({ on }) => on),
    stages: stages
      .map((stage) => ({ stage, standing: line(stage) }))
      .filter(({ standing }) => standing.some((pieces) => pieces !== 0)),
    finished: { first: line('first'), second: line('second') },
    scrapped: line('scrapped'),
  };
}

const endsOf = (sums: Sums): FlowByDay['before'] => ({
  finished: (sums.get('first') ?? 0) + (sums.get('second') ?? 0),
  scrapped: sums.get('scrapped') ?? 0,
});

function add(sums: Sums, place: Place, pieces: number): void {
  sums.set(place, (sums.get(place) ?? 0) + pieces);
}

function addSums(sums: Sums, more: Sums): void {
  for (const [place, pieces] of more) add(sums, place, pieces);
}
