import type { ShopDay, SpeciesId } from '../log/ids.ts';
import type { DustMinutes } from '../study/dust-minutes.ts';

/** Dust-making work on one wood on a day, beside the maker's own earlier days. */
export interface DustOfWood {
  readonly species: SpeciesId;
  readonly minutes: number;
  /** The median of the earlier days on which this wood made dust; null when there is none. */
  readonly usual: number | null;
  /** How many such days there are. */
  readonly days: number;
}

export interface DustDay {
  /** The wood with most minutes first; woods that made no dust on the day are left out. */
  readonly woods: readonly DustOfWood[];
  readonly all: Omit<DustOfWood, 'species'>;
}

/** A day of dust beside the earlier ones: a history of one's own, and no measure of what is safe. */
export function dustDay(minutes: readonly DustMinutes[], day: ShopDay): DustDay {
  const today = minutes.filter((each) => each.day === day);
  const before = minutes.filter((each) => each.day < day);
  const woods = today.map(({ species, minutes: spent }) => ({
    species,
    minutes: spent,
    ...usualOf(before.filter((each) => each.species === species).map((each) => each.minutes)),
  }));
  return {
    woods: woods.toSorted((a, b) => b.minutes - a.minutes),
    all: { minutes: sum(today), ...usualOf([...byDay(before).values()]) },
  };
}

function byDay(minutes: readonly DustMinutes[]): ReadonlyMap<ShopDay, number> {
  const sums = new Map<ShopDay, number>();
  for (const { day, minutes: spent } of minutes) sums.set(day, (sums.get(day) ?? 0) + spent);
  return sums;
}

function sum(minutes: readonly DustMinutes[]): number {
  return minutes.reduce((total, each) => total + each.minutes, 0);
}

function usualOf(values: readonly number[]): Pick<DustOfWood, 'usual' | 'days'> {
  const sorted = values.toSorted((a, b) => a - b);
  const [low, high] = [sorted[Math.floor((sorted.length - 1) / 2)], sorted[Math.floor(sorted.length / 2)]];
  const usual = low === undefined || high === undefined ? null : (low + high) / 2;
  return { usual, days: sorted.length };
}
