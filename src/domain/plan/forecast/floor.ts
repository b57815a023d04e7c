import { type CompiledPlan, kindsOfLuck } from './compiled-plan.ts';

/**
 * The shop floor of one replication: where lots are and what people do. Everything is allotted once and set back for each
 * replication, so that nothing is made while it runs. Lots are numbers; a lot is in one list at a time, chained by `next`.
 */
export interface Floor {
  readonly plan: CompiledPlan;
  /** ms UTC. It stands here since a number with a fraction that is handed from function to function costs memory. */
  time: number;
  /** Of a lot. `redo` is a step or −1; `ready` is when its cure ends, or before which it is not there. */
  readonly step: Int32Array;
  readonly pieces: Int32Array;
  readonly firsts: Int32Array;
  readonly redo: Int32Array;
  readonly ready: Float64Array;
  readonly next: Int32Array;
  /** In which lots are put down at the beginning. */
  readonly order: Int32Array;
  /** Lots below `used` were in use; `spare` begins the chain of those that are no longer. */
  used: number;
  spare: number;
  /**
   * Lists of lots that can be taken up: in each due class two for each stage, of what is to be unloaded and, one more, of
   * what waits to be worked on or loaded. A class has a multiple of 32 lists. −1 is nothing.
   */
  readonly heads: Int32Array;
  readonly tails: Int32Array;
  readonly listsOfClass: number;
  readonly stageOfList: Int32Array;
  /** Where lots wait for a step; what is to be unloaded there stands in the list before. */
  readonly listOfStep: Int32Array;
  readonly resourceOfList: Int32Array;
  /** `WORK`, `LOADING` or `UNLOADING`. */
  readonly kindOfList: Uint8Array;
  /** A bit for each list with a lot in it, and how many lots. */
  readonly masks: Int32Array;
  readonly lengths: Int32Array;
  /** Room for the lists that can be begun on. */
  readonly able: Int32Array;
  /** Lots that are not ready yet, by stage where they cure; the last list is of those that are yet to come. */
  readonly laterHeads: Int32Array;
  readonly laterTails: Int32Array;
  /** Those of these lists that ever have a lot, and when the first of all is ready; Infinity when none is waited for. */
  readonly laterLists: Int32Array;
  soonest: number;
  /** Of a resource: places that are free. */
  readonly free: Int32Array;
  /** Of a person: when free, or next at work; the lot in hand, −1 for none, and its list; the stretch of the calendar. */
  readonly at: Float64Array;
  readonly lotOf: Int32Array;
  readonly listOf: Int32Array;
  readonly stretch: Int32Array;
  /** When that stretch ends, and when the work in hand was begun. */
  readonly closes: Float64Array;
  readonly begun: Float64Array;
  /** 1 for who is at hand with nothing to do; `at` is then Infinity. */
  readonly idle: Uint8Array;
  idlers: number;
  /** Standard normal numbers of a stage that its variants share. */
  readonly luck: Float64Array;
  /** Of a step, drawn for the replication: ms of a piece, chances of the three flaws as parts of one, and draws so far. */
  readonly workMs: Float64Array;
  readonly loadMs: Float64Array;
  readonly gapScale: Float64Array;
  readonly backPart: Float64Array;
  readonly lostPart: Float64Array;
  readonly gap: Float64Array;
  readonly gaps: Int32Array;
  readonly visits: Int32Array;
  readonly flawKey: Int32Array;
  readonly timeKey: Int32Array;
  /** Drawn too: the part of a tray for which there must be places before it is loaded. */
  fills: number;
  /** What each visit takes beside the work on its pieces, ms. */
  changeMs: number;
  /** The lists of a class that are of holds, the others, and all, a bit for each; whether people see to the first first. */
  readonly holdLists: Int32Array;
  readonly benchLists: Int32Array;
  /** Those that can always be begun on, since nothing has to be free for them but hands. */
  readonly freeLists: Int32Array;
  readonly allLists: Int32Array;
  tends: boolean;
  /** How often people go by the rule; where they did not, a stream says what they looked at. */
  orderly: number;
  pickKey: number;
  picks: number;
  /** Pieces that are neither finished nor scrapped; visits of lots; good ones that are missing, over all variants. */
  left: number;
  totalVisits: number;
  shortOf: number;
  /** When the last piece left, and when every variant had its good ones; Infinity until then. */
  doneAt: number;
  enoughAt: number;
  /** Of a variant: good ones that are missing, pieces finished as seconds, scrapped. */
  readonly missing: Int32Array;
  readonly asSeconds: Int32Array;
  readonly scrapped: Int32Array;
  /** Good ones by variant × mark, each in the first mark at or after its end; beyond the last they are not kept. */
  readonly marks: Float64Array;
  readonly goodAt: Int32Array;
  mark: number;
  /** Of a stage, over all replications so far: ms that people worked there, and visits of pieces. */
  readonly workedMs: Float64Array;
  readonly pieceVisits: Float64Array;
}

/** What is done with the lots of a list. */
export const [WORK, LOADING, UNLOADING] = [0, 1, 2];

/** @param marks moments at which good ones are counted, ascending */
export function newFloor(plan: CompiledPlan, marks: readonly number[]): Floor {
  const steps = plan.stageOf.length;
  // A lot has at least one piece, and what a hold takes of one is another for a moment.
  const lots = plan.pieces + plan.people + 1;
  const listsOfClass = 32 * Math.max(1, Math.ceil((2 * plan.stages) / 32));
  const lists = plan.classes * listsOfClass;
  const stageOfList = Int32Array.from({ length: lists }, (_, list) => (list % listsOfClass) >> 1);
  const isHold = (list: number) => (plan.cureMs[list >> 1] ?? -1) >= 0;
  const isFree = (list: number) =>
    isHold(list) ? list % 2 === 0 : plan.resourceOf[list >> 1] === plan.resources - 1;
  const integers = (length: number) => new Int32Array(length);
  const numbers = (length: number) => new Float64Array(length);
  return {
    plan,
    time: plan.now + 0.5,
    step: integers(lots),
    pieces: integers(lots),
    firsts: integers(lots),
    redo: integers(lots),
    ready: numbers(lots),
    next: integers(lots),
    used: 0,
    spare: -1,
    heads: integers(lists),
    tails: integers(lists),
    masks: integers(lists / 32),
    listsOfClass,
    lengths: integers(lists),
    stageOfList,
    resourceOfList: stageOfList.map((stage) => plan.resourceOf[stage] ?? 0),
    kindOfList: Uint8Array.from(stageOfList, (stage, list) =>
      (plan.cureMs[stage] ?? -1) < 0 ? WORK : list % 2 === 0 ? UNLOADING : LOADING,
    ),
    laterHeads: integers(plan.stages + 1),
    laterTails: integers(plan.stages + 1),
    soonest: 0.5,
    laterLists: Int32Array.from([
      ...[...plan.cureMs.keys()].filter((stage) => (plan.cureMs[stage] ?? -1) >= 0),
      plan.stages,
    ]),
    free: integers(plan.resources),
    at: numbers(plan.people),
    lotOf: integers(plan.people),
    listOf: integers(plan.people),
    stretch: integers(plan.people),
    closes: numbers(plan.people),
    begun: numbers(plan.people),
    idle: new Uint8Array(plan.people),
    idlers: 0,
    order: integers(plan.begin.order.length),
    holdLists: bitsOf(listsOfClass, isHold),
    benchLists: bitsOf(listsOfClass, (list) => !isHold(list)),
    freeLists: bitsOf(lists, (list) => isFree(list % listsOfClass)),
    allLists: bitsOf(listsOfClass, () => true),
    tends: true,
    listOfStep: plan.stageOf.map(
      (stage, step) => (plan.classOf[plan.variantOf[step] ?? 0] ?? 0) * listsOfClass + 2 * stage + 1,
    ),
    able: integers(lists),
    luck: numbers(plan.stages * kindsOfLuck),
    workMs: numbers(steps),
    loadMs: numbers(steps),
    gapScale: numbers(steps),
    backPart: numbers(steps),
    lostPart: numbers(steps),
    gap: numbers(steps),
    gaps: integers(steps),
    visits: integers(steps),
    flawKey: integers(steps),
    timeKey: integers(steps),
    fills: 0.5,
    changeMs: 0.5,
    orderly: 0.5,
    pickKey: 0,
    picks: 0,
    left: 0,
    totalVisits: 0,
    shortOf: 0,
    doneAt: 0.5,
    enoughAt: 0.5,
    missing: integers(plan.variants),
    asSeconds: integers(plan.variants),
    scrapped: integers(plan.variants),
    marks: Float64Array.from(marks),
    goodAt: integers(plan.variants * (marks.length + 1)),
    mark: 0,
    workedMs: numbers(plan.stages),
    pieceVisits: numbers(plan.stages),
  };
}

/** A bit for each list of which it is so, in words of 32. */
function bitsOf(lists: number, isSo: (list: number) => boolean): Int32Array {
  const words = new Int32Array(lists / 32);
  for (let list = 0; list < lists; list += 1)
    if (isSo(list)) words[list >> 5] = (words[list >> 5] ?? 0) | (1 << (list & 31));
  return words;
}
