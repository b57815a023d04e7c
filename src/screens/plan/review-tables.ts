import type { BatchId } from '../../domain/log/ids.ts';
import { daysBetween } from '../../domain/plan/working-hours.ts';
import type { BatchPlan } from '../../domain/set-up/batch-facts.ts';
import { reviewWords as words } from '../../words/review-words.ts';
import type { LargestLosses, NextRow, Outcome } from './review-view.ts';

/** A table in words, the same on the screen and on paper. */
export interface WordTable {
  readonly caption: string;
  readonly heads: readonly string[];
  /** So many columns, from the first on, are words; the others are figures. */
  readonly texts: number;
  readonly rows: readonly { readonly key: string; readonly cells: readonly string[] }[];
  readonly empty: string;
}

/** Names, as the shop has them. */
export interface ReviewNames {
  readonly batch: (id: BatchId) => string;
  readonly variant: (id: string) => string;
  readonly stage: (id: string) => string;
  readonly reason: (id: string) => string;
}

export function plannedTable(
  { target, review, sums, ...of }: Outcome,
  plan: BatchPlan | undefined,
): WordTable {
  const { count, none, rows: names } = words;
  const planned = (of: (plan: BatchPlan) => string) => (plan ? of(plan) : words.notRecorded);
  const { days } = review;
  const late = target.due === null || !days ? null : daysBetween(target.due, days.last);
  const isDone = of.flying === 0 && of.made > 0;
  const lines: readonly (readonly [key: keyof typeof names, planned: string, actual: string])[] = [
    ['firsts', count(sums.wanted), count(sums.firsts)],
    [
      'done',
      target.due === null ? words.noDue : words.day(target.due),
      !days ? words.notBegun : isDone ? words.doneOn(days.last, late) : words.stillIn,
    ],
    ['expected', planned(({ done }) => (done === null ? words.beyond : words.day(done))), none],
    ['started', planned(({ started }) => count(started)), count(of.made)],
    ['expectedFirsts', planned(({ firsts }) => count(firsts)), count(sums.firsts)],
    ['seconds', planned(({ firsts, comesOut }) => count(comesOut - firsts)), count(sums.seconds)],
    ['scrapped', planned(({ started, comesOut }) => count(started - comesOut)), count(sums.scrapped)],
    ['flying', none, count(of.flying)],
    [
      'yield',
      planned(({ started, comesOut }) => (started > 0 ? words.share(comesOut / started) : words.notKnown)),
      of.yield === null ? words.notKnown : words.share(of.yield),
    ],
    ['hours', planned(({ minutes }) => words.time(minutes)), words.time(review.minutes)],
    ['cost', planned(({ cost }) => (cost === null ? words.notKnown : words.money(cost))), costWords(of.cost)],
    ['begun', none, days ? words.day(days.first) : words.notBegun],
  ];
  return {
    caption: words.planned,
    heads: [words.what, words.plan, words.actual],
    texts: 1,
    rows: lines.map(([key, ...cells]) => ({ key, cells: [names[key], ...cells] })),
    empty: none,
  };
}

function costWords({ money, isPart }: Outcome['cost']): string {
  if (!isPart) return words.money(money);
  return money > 0 ? words.atLeast(words.money(money)) : words.notKnown;
}

export const lossesTable = ({ rows }: LargestLosses, names: ReviewNames): WordTable => ({
  caption: words.losses,
  heads: [words.stage, words.reason, words.pieces, words.lost],
  texts: 2,
  rows: rows.map(({ stage, reason, pieces, money }) => ({
    key: `${stage}|${reason ?? ''}`,
    cells: [
      names.stage(stage),
      reason === null ? words.noReason : names.reason(reason),
      words.count(pieces),
      money === null ? words.notKnown : words.money(money),
    ],
  })),
  empty: words.noLosses,
});

export const nextTable = (rows: readonly NextRow[], names: ReviewNames): WordTable => ({
  caption: words.next,
  heads: [words.variant, words.comesOut, words.firstsOf, words.timeEach, words.wanted, words.starts],
  texts: 1,
  rows: rows.map(({ demand, comesOut, minutes, wanted, start }) => ({
    key: demand.key,
    cells: [
      names.variant(demand.variant),
      words.share(comesOut),
      words.share(demand.firstShare),
      minutes === undefined ? words.notKnown : words.each(minutes),
      words.count(wanted),
      startWords(start),
    ],
  })),
  empty: words.nothingWanted,
});

function startWords(start: NextRow['start']): string {
  switch (start?.kind) {
    case 'starts':
      return words.count(start.point.starts);
    case 'out-of-reach':
      return words.startsOutOfReach(start.point.starts);
    case 'never-certain':
      return words.never;
    case undefined:
      return words.notKnown;
  }
}

/** What is believed of each stage, and what a piece takes there. */
export const behindTable = (rows: readonly NextRow[], names: ReviewNames): WordTable => ({
  caption: words.behind,
  heads: [words.variant, words.stage, words.through, words.visits, words.minutesEach],
  texts: 2,
  rows: rows.flatMap(({ demand }) =>
    demand.stages.map(({ stage, through, perOut, minutes }) => ({
      key: `${demand.key} ${stage}`,
      cells: [
        names.variant(demand.variant),
        names.stage(stage),
        words.share(through),
        perOut.toFixed(2),
        minutes === undefined ? words.notKnown : words.each(minutes),
      ],
    })),
  ),
  empty: words.nothingWanted,
});

export const compareTable = (outcomes: readonly Outcome[], names: ReviewNames): WordTable => ({
  caption: words.compare,
  heads: [
    words.batch,
    words.wanted,
    words.firstsOut,
    words.rows.seconds,
    words.rows.scrapped,
    words.rows.yield,
    words.hoursEach,
    words.perGood,
    words.rows.done,
  ],
  texts: 1,
  rows: outcomes.map((outcome) => {
    const { target, review, sums, out, cost, flying } = outcome;
    return {
      key: target.batch,
      cells: [
        names.batch(target.batch),
        ...[sums.wanted, sums.firsts, sums.seconds, sums.scrapped].map(words.count),
        outcome.yield === null ? words.none : words.share(outcome.yield),
        // Work on pieces that are not out yet would be borne by those that are.
        out > 0 && flying === 0 ? words.time(review.minutes / out) : words.none,
        out > 0 ? costWords({ ...cost, money: cost.money / out }) : words.none,
        !review.days ? words.notBegun : flying > 0 ? words.stillIn : words.day(review.days.last),
      ],
    };
  }),
  empty: words.none,
});
