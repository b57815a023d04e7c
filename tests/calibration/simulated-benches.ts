import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { drawn } from './simulated-woods.ts';

export const [stages, woods, reasons] = [14, 8, 3];

/** What is true of one reason at a stage, and nobody in the shop knows. */
interface TrueFlaw {
  /** The chance of it, wood by wood. */
  readonly chances: readonly number[];
  /** The share of the pieces with it that are scrapped; the others are mended. */
  readonly scrapped: number;
}

/** A shop whose pieces pass fourteen stages in trays of 6 to 12, three reasons at each, in eight woods. */
interface SimulatedBenches {
  /** Stage by stage. */
  readonly flaws: readonly (readonly TrueFlaw[])[];
  /** Whether trays differ by nature: one in six is of a bad plank, whose pieces fail ten times as often as others. */
  readonly planks: boolean;
}

/** How often pieces of a bad plank, and of any other, fail against the average, which these make one. */
const [badShare, bad, good] = [1 / 6, 4, 0.4];

/** Rates differ between stages (0.5 to 6.5 %, all reasons together) and, by a factor of up to 7, between woods. */
export function simulatedBenches({ planks, random }: { planks: boolean; random: Random }): SimulatedBenches {
  const flaws = Array.from({ length: stages }, () => {
    const base = 0.005 + 0.06 * random();
    const ofWoods = Array.from({ length: woods }, () => Math.exp(random() * 2 - 1));
    const shares = Array.from({ length: reasons }, () => 0.1 + random());
    const all = shares.reduce((sum, share) => sum + share, 0);
    return shares.map((share) => ({
      chances: ofWoods.map((factor) => (base * factor * share) / all),
      scrapped: random(),
    }));
  });
  return { flaws, planks };
}

/** What became of a tray at a stage; flawed pieces by reason. */
export interface TrayVisit {
  readonly stage: number;
  readonly tray: number;
  readonly wood: number;
  readonly pieces: number;
  readonly passed: number;
  readonly flawed: readonly { readonly mended: number; readonly scrapped: number }[];
  /** When, in trays: they overtake one another between stages. */
  readonly at: number;
}

interface TraysInWork {
  readonly trays: number;
  readonly random: Random;
  /** By how much every chance of a flaw of a tray at a stage is multiplied. */
  readonly times?: (stage: number, tray: number) => number;
}

/** What comes of trays at all stages, tray by tray. */
export function visitsOf(
  { flaws, planks }: SimulatedBenches,
  { trays, random, times = () => 1 }: TraysInWork,
): readonly TrayVisit[] {
  const woodOf = turnsOfWoods(trays, random);
  return woodOf.flatMap((wood, tray) => {
    let alive = 6 + Math.floor(7 * random());
    const plank = planks ? (random() < badShare ? bad : good) : 1;
    return flaws.map((ofStage, stage) => {
      const pieces = alive;
      let whole = pieces;
      const flawed = ofStage.map(({ chances, scrapped }) => {
        const chance = (chances[wood] ?? 0) * plank * times(stage, tray);
        const found = drawn(whole, { chance, random });
        const lost = drawn(found, { chance: scrapped, random });
        whole -= found;
        alive -= lost;
        return { scrapped: lost, mended: found - lost };
      });
      return { stage, tray, wood, pieces, passed: whole, flawed, at: tray + 3 * random() };
    });
  });
}

/** A wood for each tray: one to four trays of a wood in turn, of some woods more often than of others. */
function turnsOfWoods(trays: number, random: Random): readonly number[] {
  const weights = Array.from({ length: woods }, () => Math.exp(2 * random()));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  const of: number[] = [];
  while (of.length < trays) {
    let left = all * random();
    const wood = weights.findIndex((weight) => {
      left -= weight;
      return left < 0;
    });
    const turn = 1 + Math.floor(4 * random());
    for (let tray = 0; tray < turn && of.length < trays; tray += 1) of.push(Math.max(0, wood));
  }
  return of;
}
