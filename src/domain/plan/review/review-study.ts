import type { BatchId, ShopDay } from '../../log/ids.ts';
import type { PieceMinutes } from '../../study/piece-minutes.ts';
import type { StudyRoutes } from '../../study/study-routes.ts';
import { tapCounts } from '../../study/tap-counts.ts';
import type { TapTable } from '../../study/tap-table.ts';
import { workedByDay } from '../../study/worked-time.ts';
import { type CostQuestion, type CostStudy, studyCosts } from '../cost/cost-study.ts';
import { type LossCount, lossCounts } from './loss-counts.ts';

export interface ReviewQuestion extends Pick<CostQuestion, 'unitCosts' | 'hourlyRate'> {
  readonly batches: readonly Pick<CostQuestion, 'batch' | 'route' | 'variants'>[];
}

/** What a batch came to. */
export interface BatchReview {
  readonly batch: BatchId;
  readonly costs: CostStudy;
  /** Minutes of work on its pieces, by the taps; see `workedByDay`. */
  readonly minutes: number;
  /** The first and the last shop day on which a piece of it was worked; null of one that nobody has begun. */
  readonly days: { readonly first: ShopDay; readonly last: ShopDay } | null;
  /** The most pieces first. */
  readonly losses: readonly LossCount[];
}

/** What each batch came to, in the order of the question. Throws RangeError for counts or costs that are no numbers. */
export function studyReviews(
  table: TapTable,
  {
    batches,
    routes,
    minutesOf,
    ...prices
  }: ReviewQuestion & { readonly routes: StudyRoutes; readonly minutesOf: PieceMinutes },
): readonly BatchReview[] {
  const counts = tapCounts(table);
  const days = daysByBatch(table);
  return batches.map((asked) => ({
    batch: asked.batch,
    costs: studyCosts(table, { ...asked, ...prices, routes, minutesOf }),
    minutes: workedByDay(table, { batch: asked.batch }).reduce((sum, { minutes }) => sum + minutes, 0),
    days: days.get(asked.batch) ?? null,
    losses: lossCounts(counts.filter(({ of }) => of?.batch === asked.batch)),
  }));
}

function daysByBatch({ length, columns, trays, days }: TapTable) {
  const found = new Map<BatchId, { first: ShopDay; last: ShopDay }>();
  for (let row = 0; row < length; row += 1) {
    const batch = trays[columns.tray[row] ?? -1]?.batch;
    const day = days[columns.day[row] ?? -1];
    if (batch === undefined || day === undefined) continue;
    const its = found.get(batch);
    if (!its) found.set(batch, { first: day, last: day });
    else if (day < its.first) its.first = day;
    else if (day > its.last) its.last = day;
  }
  return found;
}
