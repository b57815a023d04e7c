import { mostSpare } from '../log/place.ts';
import type { HoldFact } from '../set-up/facts.ts';
import { factOf, type Registers } from '../shop/registers.ts';

/** The rule is no use far from the temperature that the times are given for: past so many tenths of °C nothing more is added. */
const farthest = 300;

/**
 * How many times as long a cure takes at `celsius` as at `ratedAt` (both tenths of °C): twice as long for each 10 °C less,
 * half as long for each 10 °C more. Common practice, no source: a rule of thumb (van 't Hoff's, as chemistry has it for
 * many reactions). The data sheet rules.
 */
export function timesAsLong({
  ratedAt,
  celsius,
}: {
  readonly ratedAt: number;
  readonly celsius: number;
}): number {
  const colder = Math.max(-farthest, Math.min(farthest, ratedAt - celsius));
  return 2 ** (colder / 100);
}

/** Tenths of °C where glue and finish cure, as somebody last said; null when nobody has. */
export function celsiusOf(registers: Registers): number | null {
  return factOf(registers, { register: 'shop', id: 'shop' })?.celsius ?? null;
}

export interface CureTime {
  /** Whole minutes until pieces are ready, and until they may be taken out without being asked about. */
  readonly recommended: number;
  readonly least: number;
  /** Tenths of °C that they were reckoned for; null where they stand as the stage has them. */
  readonly celsius: number | null;
}

/**
 * The times of a hold in a shop of `celsius` (tenths of °C; null when nobody said). Never shorter than those of the stage,
 * unless the maker has confirmed that warmth may shorten them. Minutes are rounded up.
 */
export function cureTime(
  {
    cureMinutes,
    leastMinutes = cureMinutes,
    ratedAt = null,
    quickerWarm = false,
  }: Pick<HoldFact, 'cureMinutes' | 'leastMinutes' | 'ratedAt' | 'quickerWarm'>,
  celsius: number | null,
): CureTime {
  const least = Math.min(leastMinutes, cureMinutes);
  if (ratedAt === null || celsius === null) return { recommended: cureMinutes, least, celsius: null };
  const times = Math.max(timesAsLong({ ratedAt, celsius }), quickerWarm ? 0 : 1);
  return {
    recommended: Math.ceil(cureMinutes * times),
    least: Math.ceil(least * times),
    celsius: times === 1 ? null : celsius,
  };
}

/** A cure that begins `now` (ms UTC), as the place of its pieces has it. */
export function curesFrom(
  now: number,
  { recommended, least }: CureTime,
): { readonly ready: number; readonly spare?: number } {
  const spare = Math.min(recommended - least, mostSpare);
  return { ready: now + recommended * 60_000, ...(spare > 0 ? { spare } : {}) };
}
