import type { ShopDay } from '../../log/ids.ts';
import type { BatchPlan } from '../../set-up/batch-facts.ts';

/** A variant of the batch: what there is of it, what a forecast expects, and what one that comes out costs. */
export interface VariantToKeep {
  readonly finished: { readonly first: number; readonly second: number };
  readonly scrapped: number;
  /** In work, or planned to be started. */
  readonly ahead: number;
  /** On average, of those ahead. */
  readonly seconds: number;
  readonly lost: number;
  /** Parts and work of one that comes out, with those of what is lost on its way; minor units, null while not known. */
  readonly costEach: number | null;
  /** What a second brings in less than a first. */
  readonly markdown: number | null;
}

export interface PlanToKeep {
  readonly day: ShopDay;
  readonly done: ShopDay | null;
  /** Work on the batch so far, and what is ahead, on average. */
  readonly minutes: { readonly soFar: number; readonly ahead: number };
  readonly variants: readonly VariantToKeep[];
}

/**
 * What a batch is expected to come to in all, what came of it so far included, in whole pieces, minutes and minor units.
 * What one costs is what is believed when it is kept, for all of its pieces.
 */
export function planToKeep({ day, done, minutes, variants }: PlanToKeep): BatchPlan {
  const expected = variants.map(({ finished, scrapped, ahead, seconds, lost, costEach, markdown }) => {
    const all = finished.first + finished.second + ahead;
    const [comesOut, asSeconds] = [Math.max(0, all - lost), finished.second + seconds];
    return {
      ...{ started: all + scrapped, comesOut, firsts: Math.max(0, comesOut - asSeconds) },
      cost: costOf([comesOut, costEach], [asSeconds, markdown]),
    };
  });
  const sum = (of: (each: (typeof expected)[number]) => number) =>
    Math.max(0, Math.round(expected.reduce((so, each) => so + of(each), 0)));
  const isKnown = expected.every(({ cost }) => cost !== null);
  return {
    ...{ day, done, started: sum(({ started }) => started) },
    ...{ comesOut: sum(({ comesOut }) => comesOut), firsts: sum(({ firsts }) => firsts) },
    minutes: Math.round(minutes.soFar + minutes.ahead),
    cost: isKnown ? sum(({ cost }) => cost ?? 0) : null,
  };
}

/** null where pieces cost what nobody knows. */
function costOf(...lines: readonly (readonly [pieces: number, each: number | null])[]): number | null {
  return lines.reduce<number | null>(
    (sum, [pieces, each]) =>
      sum === null || (each === null && pieces > 0) ? null : sum + pieces * (each ?? 0),
    0,
  );
}
