import type { Beta } from '../../statistics/beta-moments.ts';
import { blockEnd, fillOutlook, newOutlook, type Outlook } from './outlook.ts';
import { type Next, type Passage, stagePassage } from './stage-passage.ts';

/** Good ones wanted of a variant, and what there is of it already. */
export interface StartsQuestion {
  /** Good ones wanted in all, from 0. */
  readonly wanted: number;
  /** Good ones that are finished. */
  readonly finished: number;
  /** What is believed of each stage, along the route. */
  readonly stages: readonly StageAhead[];
}

export interface StageAhead {
  /** Chance that a piece which the stage tries stays a good one. */
  readonly rate: Beta;
  /**
   * Pieces that the stage has yet to try and that may still be good ones: waiting, in a hold, or sent back by it and on
   * their way again. Below 0 where taps crossed: so many were counted on to the next stage twice.
   */
  readonly standing: number;
}

/** What comes of a number of starts, beside the pieces in flight. */
export interface StartsPoint {
  /** Pieces that are started now, at the first stage. */
  readonly starts: number;
  /** Chance of at least as many good ones as wanted, a fraction. */
  readonly chance: number;
  /** Good ones on average, with those that are finished. */
  readonly good: number;
  /** Good ones that are missing, on average; where none are missing that counts as 0. */
  readonly short: number;
  /** Good ones beyond what is wanted, on average; where there are none that counts as 0. */
  readonly over: number;
}

/**
 * The predictive distribution of good ones along the route, as a function of how many are started now.
 *
 * Exact is: the number through each stage is beta-binomial given the number that it tries, whenever they come; all pieces
 * that a stage still has to try share its unknown rate, so pieces in flight at several stages, and new ones, do well or
 * badly together. A stage's rate is met by each piece once, so the chain of stages needs no other state than a number of
 * pieces, and it is summed from the last stage to the first, for all numbers of starts at once.
 *
 * Assumed is: the rates of different stages are independent after what was seen (they are, with independent priors: a
 * piece's trials are told apart by stage); pieces are alike, also those that were sent back; and the future is like the
 * past. A stage tries a piece once, however often it visits (see `Trial` in study/tap-kind.ts): what is lost on its way
 * back counts against the stage that sent it, so such a piece stands there.
 *
 * Seconds are good ones only if the rates (`stageBeliefs`) and the counts given here say so.
 *
 * Asking for more starts than before costs only what is new: over twelve stages a tenth of a second for 400 wanted, half a
 * second for 10,000, two where nothing is known of the stages and 40,000 starts are looked at. Keep the answer while a
 * person moves a slider. Beyond 1,024 pieces chances are within 1e-8 of the exact ones (see `fillOutlook`).
 *
 * @returns what comes of a whole number of starts from 0
 * @throws {RangeError} unless the counts are whole and the rates have positive shapes; `wanted` and `starts` from 0
 * @example
 * goodByStarts({ wanted: 1, finished: 0, stages: [{ rate: { alpha: 1, beta: 1 }, standing: 0 }] })(3).chance // => 0.75
 */
export function goodByStarts(question: StartsQuestion): (starts: number) => StartsPoint {
  demandQuestion(question);
  const missing = Math.max(0, question.wanted - question.finished);
  const steps = question.stages.map(stepOf);
  const end = newOutlook();
  const first = steps[0];
  const share = yieldFrom(question.stages);
  const onTheWay = question.stages.reduce(
    (sum, { standing }, at) => sum + standing * yieldFrom(question.stages.slice(at)),
    0,
  );
  return (starts) => {
    demandWhole('A number of starts', starts);
    if (starts < 0) throw new RangeError(`A number of starts is not negative: ${starts}`);
    reachTo(starts, { steps, end, missing });
    const at = Math.max(0, starts + (first?.shift ?? 0));
    const { fewer, short } = first?.outlook ?? end;
    const good = question.finished + onTheWay + starts * share;
    const gap = short[at] ?? 0;
    return {
      starts,
      chance: 1 - (fewer[at] ?? 0),
      good,
      short: gap,
      over: Math.max(0, good - question.wanted + gap),
    };
  };
}

/** A stage, what is expected of pieces that it tries, and how many it tries beside those that come. */
interface Step extends Next {
  readonly passage: Passage;
}

const stepOf = ({ rate, standing }: StageAhead): Step => ({
  passage: stagePassage(rate),
  outlook: newOutlook(),
  shift: standing,
});

/** Share of pieces that come through all of these stages, on average. */
function yieldFrom(stages: readonly StageAhead[]): number {
  return stages.reduce((product, { rate: { alpha, beta } }) => (product * alpha) / (alpha + beta), 1);
}

interface Chain {
  readonly steps: readonly Step[];
  readonly end: Outlook;
  readonly missing: number;
}

/** Fills in, from the last stage to the first, what this many starts ask for. */
function reachTo(starts: number, { steps, end, missing }: Chain): void {
  const tops: number[] = [];
  let top = starts;
  for (const { shift } of steps) {
    top = blockEnd(Math.max(0, top + shift));
    tops.push(top);
  }
  fillEnd(end, { missing, upTo: top });
  let next: Next = { outlook: end, shift: 0 };
  for (const [at, step] of [...steps.entries()].toReversed()) {
    const after = next;
    const sumOf = (pieces: number) => step.passage(pieces, after);
    fillOutlook(step.outlook, { upTo: tops[at] ?? 0, sumOf });
    next = step;
  }
}

/** Past the last stage there is no chance left in it. */
function fillEnd(end: Outlook, { missing, upTo }: { readonly missing: number; readonly upTo: number }): void {
  for (let pieces = end.fewer.length; pieces <= upTo; pieces += 1) {
    end.fewer.push(pieces < missing ? 1 : 0);
    end.short.push(Math.max(0, missing - pieces));
  }
  end.enough = missing;
}

function demandQuestion({ wanted, finished, stages }: StartsQuestion): void {
  demandWhole('What is wanted', wanted);
  if (wanted < 0) throw new RangeError(`What is wanted is not negative: ${wanted}`);
  demandWhole('What is finished', finished);
  for (const { rate, standing } of stages) {
    demandWhole('A number of pieces', standing);
    const { alpha, beta } = rate;
    if (!(alpha > 0 && beta > 0 && alpha + beta < Number.POSITIVE_INFINITY)) {
      throw new RangeError(`The shapes of a beta must be positive, not ${alpha} and ${beta}`);
    }
  }
}

function demandWhole(what: string, value: number): void {
  if (!Number.isSafeInteger(value)) throw new RangeError(`${what} is whole, not ${value}`);
}
