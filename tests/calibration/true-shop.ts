import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { normalQuantile } from '../../src/domain/statistics/special-functions.ts';

/** What is true of a stage and nobody in the shop knows; chances and minutes wood by wood. */
export interface TrueStage {
  /** Hours of its cure; null where nothing is held. */
  readonly cureHours: number | null;
  /** Pieces that its clamps or rack hold at once. */
  readonly room: number;
  readonly minutes: readonly number[];
  readonly loading: readonly number[];
  /** Of the time of one piece. */
  readonly cv: number;
  readonly lost: readonly number[];
  readonly lowered: readonly number[];
  readonly back: readonly number[];
}

export interface TrueShop {
  readonly stages: readonly TrueStage[];
  readonly people: number;
  /** How much slower than usual each is on a day, standard deviation on the log scale. */
  readonly moods: number;
  /** Chance of an interruption at a piece, and its minutes on average. */
  readonly interrupted: number;
  readonly away: number;
  /** Minutes to put one tray away and take up the next. */
  readonly change: number;
  /** How often people choose what is nearest to its end; else they take what comes to hand. */
  readonly orderly: number;
  /** Whether clamps and racks are seen to before anything else. */
  readonly tends: boolean;
  /** The part of a tray for which clamps must be free before it is begun on. */
  readonly fills: number;
}

export const woods = 5;
/** The stage that sends pieces back, and the one that they go back to. */
export const [sends, gets] = [6, 3];

/** A shop of one to three people with eight stages, two of which hold pieces. */
export function trueShop(random: Random): TrueShop {
  const between = (low: number, high: number) => low + (high - low) * random();
  const spread = between(0.05, 0.25);
  const luck = between(0.2, 0.7);
  const ofWoods = (value: number, sd: number) =>
    Array.from({ length: woods }, () => value * Math.exp(sd * normal(random)));
  const chances = (value: number) => ofWoods(value, luck).map((chance) => Math.min(0.4, chance));
  const stages = Array.from({ length: 8 }, (_, at): TrueStage => {
    const isHold = at === 1 || at === 5;
    return {
      cureHours: isHold ? between(3, 26) : null,
      room: Math.round(between(12, 36)),
      minutes: ofWoods(isHold ? between(0.2, 0.6) : between(1.5, 9), spread),
      loading: ofWoods(between(0.5, 1.5), spread),
      cv: between(0.2, 0.6),
      lost: chances(between(0.001, at === 2 ? 0.08 : 0.02)),
      lowered: chances(at === sends ? between(0.01, 0.08) : 0.001),
      back: chances(at === sends ? between(0.01, 0.08) : 0),
    };
  });
  return {
    stages,
    people: 1 + Math.floor(3 * random()),
    moods: between(0.02, 0.15),
    interrupted: between(0, 0.02),
    away: between(5, 20),
    change: between(1, 5),
    orderly: between(0.5, 1),
    tends: random() < 0.5,
    fills: between(0.3, 1),
  };
}

export function normal(random: Random): number {
  return normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32);
}
