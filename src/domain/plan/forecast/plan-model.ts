/**
 * What a forecast reckons with, as plain data: it goes to a worker as it is, and is the same on every tablet. Moments are
 * ms UTC, times of work minutes.
 */
export interface PlanModel {
  readonly now: number;
  /** What a good one is: a first alone, or a second too. */
  readonly goal: 'firsts' | 'finished';
  /** In an order in which every route runs: of two that can be worked on, the later one is nearer to its end. */
  readonly stages: readonly PlanStage[];
  readonly resources: readonly PlanResource[];
  readonly people: readonly PlanPerson[];
  readonly variants: readonly PlanVariant[];
  /** All that is in work, and what is to be started. */
  readonly lots: readonly PlanLot[];
  /** Whether people take lots by the rule alone (see `replicate`), of several at a stage the first in the list, or nobody knows. */
  readonly takes: 'in-order' | 'any';
  /** Minutes of a person's hours that a minute of counted work takes: changing over, tidying and talk are in it. */
  readonly pace: Drawn;
  /** Counted work of a visit of a tray to a stage, on average: much of what goes into no piece comes once a visit. */
  readonly visitMinutes: number;
}

export type PlanStage =
  /** Hands, piece by piece. Of a resource it takes one place as long as somebody works there: a lathe, a booth. */
  | { readonly kind: 'work'; readonly resource: number | null }
  /** Loaded by hand, cured by the clock, unloaded by hand; each piece takes a place from loading to unloading. */
  | { readonly kind: 'hold'; readonly resource: number | null; readonly cureMinutes: number };

/** Clamps, a rack, a lathe; several stages may share it. */
export interface PlanResource {
  readonly name: string;
  /** Places; null is no limit. */
  readonly capacity: number | null;
}

export interface PlanPerson {
  /** When this person is at work: in order, not overlapping. Beyond the last there is no work. */
  readonly hours: readonly { readonly from: number; readonly to: number }[];
}

export interface PlanVariant {
  /** Good ones wanted in all, and those that there are. */
  readonly wanted: number;
  readonly finished: number;
  /** When it is due; null when nobody said. What is due first is worked on first. */
  readonly due: number | null;
  /** Along its route. */
  readonly steps: readonly PlanStep[];
}

/**
 * A stage as a variant meets it. A visit ends in `back` or not; what is not sent back has had its trial: it is `lost`, or
 * else `lowered` to a second, or as it was. A piece on its way again to the stage that sent it back has had the trials of
 * the stages between.
 */
export interface PlanStep {
  readonly stage: number;
  /** Of a piece: work, or unloading. */
  readonly minutes: PieceMinutesBelief;
  /** Of a piece, where the stage is a hold. */
  readonly loading: PieceMinutesBelief;
  readonly lost: Chance;
  readonly lowered: Chance;
  readonly back: Chance;
  /** Earlier steps of the route that pieces are sent back to, by weight. */
  readonly backTo: readonly { readonly step: number; readonly weight: number }[];
}

/** What is believed of a chance. `shared` is the share of its variance that it has in common with other variants there. */
export type Chance =
  | { readonly kind: 'known'; readonly chance: number }
  | { readonly kind: 'beta'; readonly alpha: number; readonly beta: number; readonly shared: number };

/** A log-normal belief: half of it lies below `median`, and `logSd` is its standard deviation on the log scale. */
export interface Drawn {
  readonly median: number;
  readonly logSd: number;
}

/** What is believed of the mean minutes of a piece, and how pieces spread about it. */
export interface PieceMinutesBelief extends Drawn {
  /** Share of the variance that it has in common with other variants at the stage. */
  readonly shared: number;
  /** Standard deviation of the time of one piece over its mean. */
  readonly cv: number;
}

/** Pieces of one variant that travel together. */
export interface PlanLot {
  readonly variant: number;
  /** Where on the variant's route. */
  readonly step: number;
  readonly firsts: number;
  readonly seconds: number;
  /** The step that sent them back and that they have not left again; null when none did. */
  readonly redo: number | null;
  /** `waiting`: to be worked on from `ready` on; `held`: in clamps or on a rack, cured at `ready`. */
  readonly at: 'waiting' | 'held';
  readonly ready: number;
}

/** Why nothing can be said. */
export type PlanProblem =
  /** Nobody has an hour of work left in the calendar. */
  | { readonly kind: 'no-hands' }
  /** A resource that pieces need has no place. */
  | { readonly kind: 'capacity-zero'; readonly resource: number };

/** Why a plan cannot be worked off, seen without working it off; undefined when nothing is in its way. */
export function planProblem({
  now,
  people,
  resources,
  stages,
  variants,
  lots,
}: PlanModel): PlanProblem | undefined {
  if (lots.length === 0) return undefined;
  const hasHands = people.some(({ hours }) => hours.some(({ from, to }) => to > Math.max(now, from)));
  if (!hasHands) return { kind: 'no-hands' };
  const met = new Set(
    lots.flatMap(({ variant }) =>
      (variants[variant]?.steps ?? []).map(({ stage }) => stages[stage]?.resource),
    ),
  );
  const none = resources.findIndex(({ capacity }, at) => capacity === 0 && met.has(at));
  return none < 0 ? undefined : { kind: 'capacity-zero', resource: none };
}
