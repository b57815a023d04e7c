import type { StageId } from '../../log/ids.ts';
import type { HoldGroup } from '../../rollup/hold-groups.ts';
import { roundsUntil } from '../rounds/rounds-until.ts';
import type { Shift } from '../rounds/shifts.ts';

/** Clamps or a rack with so many places, and the stages that share them. */
export interface HoldAsked {
  readonly key: HoldGroup['key'];
  /** 1 or more; what has no limit holds nothing back, and is not asked about. */
  readonly capacity: number;
  /** The cure of each, ms. */
  readonly stages: readonly { readonly stage: StageId; readonly cure: number }[];
}

/** Working time of a shop; ms UTC. */
export interface Working {
  readonly now: number;
  readonly until: number;
  /** When somebody is there: in order, apart, none beyond `until`. */
  readonly shifts: readonly Shift[];
}

/** What some places have to give in a stretch of time, in minutes of one place. */
export interface HoldOffer {
  readonly key: HoldGroup['key'];
  readonly capacity: number;
  /** 0 where no round fits. */
  readonly available: number;
  readonly stages: readonly {
    readonly stage: StageId;
    /** Pieces that could cure if the places were for this stage alone: rounds × places. */
    readonly fits: number;
    /** Minutes of a place for a piece: the cure, and the wait until somebody is there to empty and fill it. */
    readonly takes: number;
  }[];
}

const minute = 60_000;

/**
 * Places of clamps or a rack as a resource. Where rounds of several stages share them, each round takes the time that it
 * takes on average when rounds of its stage follow one another, nights and days off among it.
 *
 * @param handsAt minutes of hands for a piece at a stage; undefined is reckoned as none
 */
export function holdOffer(
  { key, capacity, stages }: HoldAsked,
  working: Working,
  handsAt: (stage: StageId) => number | undefined,
): HoldOffer {
  const fitting = stages.map(({ stage, cure }) => {
    const load = (handsAt(stage) ?? 0) * minute;
    const { pieces } = roundsUntil({ stage, cure, load, unload: 0 }, { capacity, ...working });
    return { stage, fits: pieces, least: (cure + load) / minute };
  });
  const all = Math.max(0, working.until - working.now) * (capacity / minute);
  const available = fitting.some(({ fits }) => fits > 0) ? all : 0;
  return {
    ...{ key, capacity, available },
    stages: fitting.map(({ stage, fits, least }) => ({
      stage,
      fits,
      // A stage that has no round in it needs more than there is.
      takes: fits > 0 ? all / fits : available + least,
    })),
  };
}
