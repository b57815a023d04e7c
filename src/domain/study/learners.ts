import type { PersonId, StageId } from '../log/ids.ts';
import { longestStretch } from '../shop/days.ts';
import { instantOf } from '../statistics/tap-groups.ts';
import type { PieceMinutes } from './piece-minutes.ts';
import type { TapTable } from './tap-table.ts';

/** What one person has done at one stage, from the first piece of the log on. */
export interface Learner {
  readonly stage: StageId;
  /** null for nobody in particular. */
  readonly person: PersonId | null;
  /** Pieces done. */
  readonly made: number;
  /** Those of them whose time is known. */
  readonly timed: number;
  /** In their order, thinned: see `keptPerDoubling`. */
  readonly kept: readonly TimedPieces[];
}

/** Pieces that were done in one go, as one observation. */
export interface TimedPieces {
  /** Which piece of the person's at the stage: of several the geometric mean of their numbers. */
  readonly number: number;
  /** Of each of them. */
  readonly minutes: number;
  readonly pieces: number;
}

/**
 * So many times are kept of each doubling of the pieces made: all of the first 127, then those at every second, fourth, …
 * number. That goes by the numbers alone, and what is kept has the number that it had.
 */
const keptPerDoubling = 64;

interface Stretch {
  readonly station: number;
  readonly first: number;
  last: number;
  /** undefined where nobody knows. */
  minutes: number | undefined;
}

type Making = Omit<Learner, 'made' | 'timed' | 'kept'> & {
  made: number;
  timed: number;
  open: Stretch | undefined;
  readonly kept: TimedPieces[];
};

/**
 * The times of all work by stage × person. Pieces of one tap, or of taps so close that they were done together (as in
 * `tapGroups`), have an equal share of the minutes. A piece counts as made but has no time when its tap is the first of a
 * spell, when nobody knows since when it was worked on, or when that is longer than `longestStretch`, a break.
 */
export function learnersIn(table: TapTable, pieceMinutes: PieceMinutes): readonly Learner[] {
  const { kind, tray, person, station, elapsed, begins } = table.columns;
  const stages = indexed(table.kinds.map(({ stage }) => stage));
  const woods = indexed(table.trays.map(({ species }) => species));
  const instants = stages.items.map((stage) =>
    woods.items.map((wood) => instantOf(pieceMinutes(stage, wood) ?? 0)),
  );
  const found = new Map<number, Making>();
  for (let row = 0; row < table.length; row += 1) {
    const what = table.kinds[kind[row] ?? -1];
    if (what?.kind !== 'visit') continue;
    const stage = stages.at[kind[row] ?? -1] ?? 0;
    const who = person[row] ?? 0;
    const key = stage * table.persons.length + who;
    const learner = found.get(key) ?? begun({ stage: what.stage, person: table.persons[who] ?? null });
    found.set(key, learner);
    take(learner, {
      ms: begins[row] === 1 ? -1 : (elapsed[row] ?? -1),
      instant: instants[stage]?.[woods.at[tray[row] ?? -1] ?? -1] ?? 0,
      pieces: what.pieces,
      station: station[row] ?? 0,
    });
  }
  for (const learner of found.values()) close(learner);
  return [...found.values()].map(({ open: _, ...learner }) => learner);
}

/** Each of some texts once, and of each place in the list which of them stands there. */
function indexed<Text extends string>(texts: readonly Text[]) {
  const items = [...new Set(texts)];
  return { items, at: Uint32Array.from(texts, (text) => items.indexOf(text)) };
}

function begun(of: Pick<Learner, 'stage' | 'person'>): Making {
  return { ...of, made: 0, timed: 0, open: undefined, kept: [] };
}

interface WorkTap {
  /** −1 where nobody knows. */
  readonly ms: number;
  /** Minutes within which it belongs to the stretch before. */
  readonly instant: number;
  readonly pieces: number;
  readonly station: number;
}

function take(learner: Making, { ms, instant, pieces, station }: WorkTap): void {
  const first = learner.made + 1;
  learner.made += pieces;
  const minutes = ms < 0 || ms > longestStretch ? undefined : ms / 60_000;
  const isSoon = minutes !== undefined && minutes <= instant;
  const { open } = learner;
  if (isSoon && open?.station === station) {
    open.last = learner.made;
    if (open.minutes !== undefined) open.minutes += minutes;
    return;
  }
  close(learner);
  // What is tapped at once without a tap of the same hands before it was done in nobody knows how long.
  learner.open = { station, first, last: learner.made, minutes: isSoon ? undefined : minutes };
}

function close(learner: Making): void {
  const { open } = learner;
  learner.open = undefined;
  if (open?.minutes === undefined) return;
  const { first, last, minutes } = open;
  const pieces = last - first + 1;
  learner.timed += pieces;
  const doubling = 2 ** (31 - Math.clz32(last));
  const every = Math.max(1, doubling / keptPerDoubling);
  const isKept = Math.floor(last / every) > Math.floor((first - 1) / every);
  if (isKept) learner.kept.push({ number: middle(first, last), minutes: minutes / pieces, pieces });
}

/** The geometric mean of the numbers from `first` to `last`: there a curve has their mean, to the first order of its exponent. */
function middle(first: number, last: number): number {
  if (first === last) return first;
  let logs = 0;
  for (let number = first; number <= last; number += 1) logs += Math.log(number);
  return Math.exp(logs / (last - first + 1));
}
