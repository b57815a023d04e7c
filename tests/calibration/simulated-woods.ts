import type { Random } from '../../src/domain/chance/seeded-random.ts';
import { normalQuantile } from '../../src/domain/statistics/special-functions.ts';

/** What became of the pieces of one wood so far at one stage. */
interface SimulatedStep {
  readonly atRisk: number;
  readonly lost: number;
}

/** A wood of a simulated shop: what is true of it, and what the maker has seen of it so far. */
export interface SimulatedWood {
  /** The share of pieces that come through the whole route, which nobody in the shop knows. */
  readonly truth: number;
  readonly steps: readonly SimulatedStep[];
}

/** Chances to lose a piece at each of fourteen stages of an average wood: two stages where it happens, the rest seldom. */
const route = [0, 0.01, 0, 0, 0.05, 0.02, 0.01, 0, 0, 0.01, 0.04, 0.01, 0, 0.01];
const woods = 6;

/**
 * The woods of a shop, of 20 to 60 pieces each, in trays of 6 to 12: each is done with the chance `done`, the others stand
 * anywhere along the route. Woods differ by a log-normal factor on what is lost, the shop's own spread between 0.3 and 1 on the log scale.
 */
export function simulatedWoods({ done, random }: { done: number; random: Random }): readonly SimulatedWood[] {
  const spread = 0.3 + 0.7 * random();
  return Array.from({ length: woods }, () => {
    const factor = Math.exp(spread * normal(random));
    const losses = route.map((loss) => Math.min(0.6, loss * factor));
    return {
      truth: losses.reduce((share, loss) => share * (1 - loss), 1),
      steps: stepsOf(losses, { pieces: 20 + Math.floor(41 * random()), done, random }),
    };
  });
}

function stepsOf(
  losses: readonly number[],
  { pieces, done, random }: { pieces: number; done: number; random: Random },
): readonly SimulatedStep[] {
  const steps = losses.map(() => ({ atRisk: 0, lost: 0 }));
  let left = pieces;
  while (left > 0) {
    const tray = Math.min(left, 6 + Math.floor(7 * random()));
    left -= tray;
    const reached = random() < done ? losses.length : Math.floor(losses.length * random());
    let alive = tray;
    for (const [at, step] of steps.slice(0, reached).entries()) {
      const lost = drawn(alive, { chance: losses[at] ?? 0, random });
      step.atRisk += alive;
      step.lost += lost;
      alive -= lost;
    }
  }
  return steps;
}

/** How many of so many meet a chance. */
export function drawn(pieces: number, { chance, random }: { chance: number; random: Random }): number {
  let met = 0;
  for (let piece = 0; piece < pieces; piece += 1) if (random() < chance) met += 1;
  return met;
}

function normal(random: Random): number {
  return normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32);
}
