/** Three questions to a log, answered: by tables of the app, or by groups of a library. */
import type { LogTables } from '../../../src/domain/packed/log-tables.ts';

/** What a library found in `TallyRows`: sums by group of rows; the empty text stands for rows of none. */
export interface Groups {
  readonly arrived: readonly { readonly stage: string; readonly species: string; readonly pieces: number }[];
  readonly left: Groups['arrived'];
  readonly visits: readonly {
    readonly stage: string;
    readonly species: string;
    readonly first: number;
    readonly clean: number;
  }[];
  readonly flaws: readonly { readonly reason: string; readonly flawed: number }[];
}

/** A sum by its name, without those that are 0, as one text: equal answers are equal texts. */
type Answer = string;

function answer(sums: Iterable<readonly [name: string, amount: number]>): Answer {
  const all = new Map<string, number>();
  for (const [name, amount] of sums) all.set(name, (all.get(name) ?? 0) + amount);
  return JSON.stringify([...all].filter(([, sum]) => sum !== 0).sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Work in progress and first visits per stage and species, and flawed pieces per reason. */
export function answerOfTables({ ledger, visits, flaws }: LogTables): Answer {
  return answer([
    ...[...ledger.wip].map(([key, by]) => [`wip ${first(key, 2)}`, by] as const),
    ...[...visits.first].map(([key, by]) => [`first ${key}`, by] as const),
    ...[...visits.clean].map(([key, by]) => [`clean ${key}`, by] as const),
    ...[...flaws.byReason].map(([key, by]) => [`flawed ${key.split('|')[2]}`, by] as const),
  ]);
}

const first = (key: string, parts: number) => key.split('|').slice(0, parts).join('|');

export function answerOfGroups({ arrived, left, visits, flaws }: Groups): Answer {
  const at = ({ stage, species }: { stage: string; species: string }) => `${stage}|${species}`;
  const isNamed = ({ stage }: { stage: string }) => stage !== '';
  return answer([
    ...arrived.filter(isNamed).map((group) => [`wip ${at(group)}`, group.pieces] as const),
    ...left.filter(isNamed).map((group) => [`wip ${at(group)}`, -group.pieces] as const),
    ...visits.filter(isNamed).map((group) => [`first ${at(group)}`, group.first] as const),
    ...visits.filter(isNamed).map((group) => [`clean ${at(group)}`, group.clean] as const),
    ...flaws.map(({ reason, flawed }) => [`flawed ${reason}`, flawed] as const),
  ]);
}
