import type { PartId, StageId } from '../../log/ids.ts';
import type { VariantFact } from '../../set-up/facts.ts';
import { type Amount, known, type Missing, notKnown, sumOf } from './amount.ts';
import { labourCost, partsCost } from './work-cost.ts';

/** How the pieces of a variant are made, and what goes into one. */
export interface Making {
  readonly route: readonly StageId[];
  readonly bill: VariantFact['bill'];
  /** What a piece takes at a stage; undefined while that is not known. */
  readonly minutesAt: (stage: StageId) => number | undefined;
  /** Minor units of one part; null while nobody has said. */
  readonly unitCost: (part: PartId) => number | null;
  /** Minor units; null while nobody has said. */
  readonly hourlyRate: number | null;
}

/**
 * What a scrapped piece had cost: the work of each stage up to the one where it was scrapped, and the parts that earlier
 * stages had fitted, less those that were saved. A stage that it does not know, as after a change of the route, has
 * nothing behind it.
 *
 * @example lossOfScrap(making, { stage: polish, saved: [core] }) // for `each` of a Loss
 */
export function lossOfScrap(
  { route, bill, minutesAt, unitCost, hourlyRate }: Making,
  { stage, saved }: { readonly stage: StageId; readonly saved: readonly PartId[] },
): Amount {
  const at = route.indexOf(stage);
  const behind = new Set(route.slice(0, Math.max(0, at)));
  const parts = bill
    .filter((line) => behind.has(line.stage) && !saved.includes(line.part))
    .map(({ part, each }) => ({ part, pieces: each, unitCost: unitCost(part) }));
  const work = route.slice(0, at + 1).map((each) => ({ stage: each, visits: 1, minutes: minutesAt(each) }));
  return sumOf([partsCost(parts), labourCost(work, hourlyRate)]);
}

/** What a piece that was sent back costs more: the work from the stage that it goes back to up to the one that sent it. */
export function lossOfReturn(
  { route, minutesAt, hourlyRate }: Making,
  { stage, to }: { readonly stage: StageId; readonly to: StageId },
): Amount {
  const again = route.slice(Math.max(0, route.indexOf(to)), route.indexOf(stage) + 1);
  return labourCost(
    again.map((each) => ({ stage: each, visits: 1, minutes: minutesAt(each) })),
    hourlyRate,
  );
}

/** What a piece that was lowered to a second brings in less. */
export function lossOfSecond({
  firstPrice,
  secondPrice,
}: Pick<VariantFact, 'firstPrice' | 'secondPrice'>): Amount {
  if (firstPrice !== null && secondPrice !== null) return known(firstPrice - secondPrice);
  const missing: Missing[] = [];
  if (firstPrice === null) missing.push({ what: 'price', grade: 'first' });
  if (secondPrice === null) missing.push({ what: 'price', grade: 'second' });
  return notKnown(...missing);
}
