import type { Random } from '../../../../src/domain/chance/seeded-random.ts';
import type { Beta } from '../../../../src/domain/statistics/beta-moments.ts';

/** A rate that is as good as known: the beta has no spread that a test could see. */
export const known = (rate: number): Beta => ({ alpha: rate * 1e13, beta: (1 - rate) * 1e13 });

/** A draw of Gamma(shape, 1) (G. Marsaglia, W. W. Tsang, ACM Trans. Math. Software 26 (2000) 363-372; from memory). */
function drawGamma(shape: number, random: Random): number {
  if (shape < 1) return drawGamma(shape + 1, random) * (1 - random()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random()) < (x * x) / 2 + d * (1 - v + Math.log(v))) return d * v;
  }
}

export function drawRate({ alpha, beta }: Beta, random: Random): number {
  const good = drawGamma(alpha, random);
  return good / (good + drawGamma(beta, random));
}

/** How many of some pieces come through at a chance each. */
export function drawThrough(pieces: number, chance: number, random: Random): number {
  let through = 0;
  for (let piece = 0; piece < pieces; piece += 1) if (random() < chance) through += 1;
  return through;
}
