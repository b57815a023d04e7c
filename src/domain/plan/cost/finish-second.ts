import type { StageId } from '../../log/ids.ts';
import { type Amount, known, knownOf, type Missing, missingOf, notKnown, times } from './amount.ts';
import { roundUp } from './price-check.ts';
import { labourCost, type PartUse, partsCost } from './work-cost.ts';

/** A stage that a blemished piece has still to go through. */
interface StageToCome {
  readonly stage: StageId;
  readonly minutes: number | undefined;
  /** Parts and consumables that it takes there. */
  readonly parts: readonly PartUse[];
  /** Chance that it comes through, as a second at least. */
  readonly chance: number;
}

export interface SecondQuestion {
  /** From the stage where it stands now, in order. */
  readonly ahead: readonly StageToCome[];
  /** Minor units an hour: of the maker, or what an hour of the constraint earns, where that is the scarcer. */
  readonly hourlyRate: number | null;
  readonly secondPrice: number | null;
  /** What the parts that a scrap saves now are worth, less the work of saving them; in minor units. */
  readonly saved: Amount;
}

export type SecondVerdict =
  | {
      readonly kind: 'known';
      /** Chance that it is sold as a second. */
      readonly chance: number;
      /** What finishing it still costs, on average: a piece that is lost on the way costs no more from there. */
      readonly toCome: number;
      /** How much better finishing is than scrapping, on average; below 0 scrapping is. */
      readonly gain: number;
      /** The least price of a second at which finishing is worth it, in whole minor units. */
      readonly breakEvenPrice: number;
    }
  /** It cannot come through. */
  | { readonly kind: 'no-chance' }
  | { readonly kind: 'not-known'; readonly missing: readonly Missing[] };

/**
 * Whether a blemished piece is worth finishing as a second: the price times the chance to come through, against what
 * finishing still costs and what scrapping would save. What it has cost so far is spent either way and does not count
 * (sunk cost; common practice, no source). Not rounded, but for the price.
 *
 * @throws {RangeError} for a chance that is none, or amounts that are no numbers
 * @example
 * finishSecond({ ahead: [{ stage: wax, minutes: 6, parts: [], chance: 1 }], hourlyRate: 3000, secondPrice: 2000,
 *   saved: { kind: 'known', money: 900 } }) // toCome 300, gain 800, breakEvenPrice 1200
 */
export function finishSecond({ ahead, hourlyRate, secondPrice, saved }: SecondQuestion): SecondVerdict {
  const costs: Amount[] = [];
  let chance = 1;
  for (const { stage, minutes, parts, chance: here } of ahead) {
    if (!(here >= 0 && here <= 1)) throw new RangeError(`A chance lies between 0 and 1, not at ${here}`);
    costs.push(times(chance, partsCost(parts)));
    costs.push(times(chance, labourCost([{ stage, visits: 1, minutes }], hourlyRate)));
    chance *= here;
  }
  if (chance === 0) return { kind: 'no-chance' };
  const price = secondPrice === null ? notKnown({ what: 'price', grade: 'second' }) : known(secondPrice);
  const missing = missingOf([...costs, saved, price]);
  if (missing.length > 0) return { kind: 'not-known', missing };
  const [toCome, scrap] = [knownOf(costs), knownOf([saved])];
  return {
    kind: 'known',
    chance,
    toCome,
    gain: chance * knownOf([price]) - toCome - scrap,
    breakEvenPrice: Math.max(0, roundUp((toCome + scrap) / chance)),
  };
}
