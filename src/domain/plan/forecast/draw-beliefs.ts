import { chanceAt, tableLength } from './chance-tables.ts';
import { type ChanceColumns, kindsOfLuck, type TimeColumns } from './compiled-plan.ts';
import type { Floor } from './floor.ts';
import { bitsAt, keyOf, normalOf, secondNormalOf, shareOf, thirdNormalOf } from './keyed-random.ts';

/** What a stream of draws is for; a stage has one of each, and so has a step. */
const [WORK, LOADING, LOST, LOWERED, BACK] = [0, 1, 2, 3, 4];
const [PACE, STAGES, STEPS, STREAMS, FILLS, ORDERLY, PICKS, TENDS, CHANGES] = [0, 1, 2, 3, 4, 5, 6, 7, 8];
/** What tells the draws of loading or unloading from the others of a choice. */
const ofTurns = 0x2545f491;
/** What tells the stream of a step's times from that of its flaws. */
const ofTimes = 0x5bd1e995;
/** Nobody knows how full the clamps must get before a tray is torn apart for them: all from a quarter of it is as likely. */
const leastFill = 0.25;
/** Nor how often people go by the rule, where that is not said: all from half of the time to always is as likely. */
const leastOrderly = 0.5;
/**
 * What goes into no piece is mostly the changing from one tray to the next, and then a tray of one costs as much as one of
 * ten: any share of it from a half on is as likely.
 */
const leastChanges = 0.5;

/**
 * Draws what is true in a replication from what is believed: the pace, minutes and chances of each step. Variants share a
 * part of their luck at a stage, since what is not known of a stage is not known of all of them.
 *
 * The three flaws of a visit are one chance with three parts, so that a visit without any, as most are, draws nothing: how
 * many pieces pass before the next flaw is geometric, and is drawn once.
 */
export function drawBeliefs(floor: Floor, key: number): void {
  const { plan, workMs, loadMs, gapScale, backPart, lostPart, flawKey, timeKey } = floor;
  floor.fills = leastFill + (1 - leastFill) * shareOf(keyOf(key, FILLS));
  floor.orderly = plan.begin.isShuffled
    ? leastOrderly + (1 - leastOrderly) * shareOf(keyOf(key, ORDERLY))
    : 1;
  floor.tends = !plan.begin.isShuffled || shareOf(keyOf(key, TENDS)) < 1 / 2;
  floor.pickKey = keyOf(key, PICKS);
  floor.picks = 0;
  const pace = drawPace(floor, key);
  const ofStage = keyOf(key, STAGES);
  const ofStep = keyOf(key, STEPS);
  const streams = keyOf(key, STREAMS);
  const { luck } = floor;
  for (let at = 0; at < luck.length; at += 1) luck[at] = normalOf(bitsAt(ofStage, at));
  for (let step = 0; step < plan.stageOf.length; step += 1) {
    const stage = plan.stageOf[step] ?? 0;
    const shared = stage * kindsOfLuck;
    const bits = bitsAt(ofStep, 2 * step);
    const isHold = (plan.cureMs[stage] ?? -1) >= 0;
    const more = isHold || plan.back.isNever[step] === 0 ? bitsAt(ofStep, 2 * step + 1) : 0;
    workMs[step] = Math.exp(pace + timeLuck(plan.work, step, luck[shared + WORK] ?? 0, normalOf(bits)));
    if (isHold) {
      const loading = timeLuck(plan.loading, step, luck[shared + LOADING] ?? 0, normalOf(more));
      loadMs[step] = Math.exp(pace + loading);
    }
    const lost = chance(plan.lost, step, luck[shared + LOST] ?? 0, secondNormalOf(bits));
    const lowered = chance(plan.lowered, step, luck[shared + LOWERED] ?? 0, thirdNormalOf(bits));
    const back = chance(plan.back, step, luck[shared + BACK] ?? 0, secondNormalOf(more));
    const pass = (1 - back) * (1 - lost) * (1 - lowered);
    const any = 1 - pass;
    gapScale[step] = any > 0 ? 1 / Math.log(pass) : Number.NEGATIVE_INFINITY;
    backPart[step] = any > 0 ? back / any : 0;
    lostPart[step] = any > 0 ? (back + (1 - back) * lost) / any : 0;
    const stream = bitsAt(streams, step);
    flawKey[step] = stream;
    timeKey[step] = stream ^ ofTimes;
  }
}

/** Draws the pace: what comes once a visit stands on the floor, and of what comes with each piece it gives the logarithm. */
function drawPace(floor: Floor, key: number): number {
  const { plan } = floor;
  const pace = Math.exp(plan.paceLog + plan.paceSd * normalOf(keyOf(key, PACE)));
  const share = leastChanges + (1 - leastChanges) * shareOf(keyOf(key, CHANGES));
  const changes = plan.visitMs > 0 ? share * Math.max(0, pace - 1) : 0;
  floor.changeMs = changes * plan.visitMs;
  return Math.log(pace - changes);
}

function timeLuck(
  { logMs, sharedSd, ownSd }: TimeColumns,
  step: number,
  shared: number,
  own: number,
): number {
  return (logMs[step] ?? 0) + (sharedSd[step] ?? 0) * shared + (ownSd[step] ?? 0) * own;
}

function chance(of: ChanceColumns, step: number, shared: number, own: number): number {
  if (of.isNever[step] === 1) return 0;
  return chanceAt(of.tables, step * tableLength, (of.shared[step] ?? 0) * shared + (of.own[step] ?? 0) * own);
}

/**
 * What a person takes who does not go by the rule this time: as a share of all lots that can be begun on, from 0 to 1; −1 for one who
 * does. It stays the same until somebody has taken something.
 */
export function whim(floor: Floor): number {
  const { orderly } = floor;
  if (orderly === 1) return -1;
  const share = shareOf(bitsAt(floor.pickKey, floor.picks));
  return share < orderly ? -1 : (share - orderly) / (1 - orderly);
}

/**
 * Whether somebody unloads rather than loads, at a stage where this many lots are to be unloaded and loaded: each of them is
 * as likely, where nobody says what comes first.
 */
export function unloadsFirst(floor: Floor, unloading: number, loading: number): boolean {
  if (unloading === 0 || !floor.plan.begin.isShuffled) return false;
  return shareOf(bitsAt(floor.pickKey ^ ofTurns, floor.picks)) * (unloading + loading) < unloading;
}

/** Pieces that pass before the next flaw of a step; Infinity where none comes. */
export function nextGap(floor: Floor, step: number): number {
  const count = floor.gaps[step] ?? 0;
  floor.gaps[step] = count + 2;
  const scale = floor.gapScale[step] ?? 0;
  if (scale === Number.NEGATIVE_INFINITY) return Number.POSITIVE_INFINITY;
  return Math.floor(Math.log(shareOf(bitsAt(floor.flawKey[step] ?? 0, count))) * scale);
}

/** A number between 0 and 1 that says what the flaw is whose gap was drawn last. */
export const flawKind = (floor: Floor, step: number): number =>
  shareOf(bitsAt(floor.flawKey[step] ?? 0, (floor.gaps[step] ?? 0) - 1));

/**
 * ms of pieces one after the other that take `ms` on average, with a coefficient of variation of three times `third`, which
 * must be below 3: a gamma variate, as sums of gamma variates are, by
 * E. B. Wilson and M. M. Hilferty, The distribution of chi-square, Proceedings of the National Academy of Sciences 17
 * (1931) 684-688 (from memory): its cube root is nearly normal. Mean exact but for what is cut off below 0.
 */
export function timeTogether(ms: number, third: number, bits: number): number {
  const square = third * third;
  const root = 1 - square + third * normalOf(bits);
  // Its mean is 1 less the sixth power of `third`, and this is one over that.
  const sixth = square * square * square;
  return root > 0 ? ms * root * root * root * (1 + sixth + sixth * sixth) : 0;
}
