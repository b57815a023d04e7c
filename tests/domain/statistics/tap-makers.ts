import type { Random } from '../../../src/domain/chance/seeded-random.ts';
import { normalQuantile } from '../../../src/domain/statistics/special-functions.ts';
import type { Tap } from '../../../src/domain/statistics/tap-groups.ts';

/** Work at a stage whose truth is known: times of pieces are log-normal. */
export interface TrueWork {
  /** Minutes of a piece on average, and their standard deviation over that. */
  readonly mean: number;
  readonly cv: number;
  /** How a dozen or fewer that were done before anybody tapped get into the log. */
  readonly bulk: 'one-tap' | 'taps-in-a-row';
  /** Minutes of a forgotten pause: anything between. */
  readonly pause: readonly [least: number, most: number];
}

/** Taps of which one in ten stands for many pieces, and three in a hundred come after a forgotten pause. */
export function tapsOf(
  { mean, cv, bulk, pause: [least, most] }: TrueWork,
  { taps, random }: { readonly taps: number; readonly random: Random },
): Tap[] {
  const sigma = Math.sqrt(Math.log1p(cv * cv));
  const piece = () =>
    mean * Math.exp(sigma * normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32) - sigma ** 2 / 2);
  return Array.from({ length: taps }, () => {
    const pieces = random() < 0.1 ? 2 + Math.floor(random() * 11) : 1;
    let minutes = random() < 0.03 ? least + (most - least) * random() : 0;
    for (let done = 0; done < pieces; done += 1) minutes += piece();
    if (bulk === 'one-tap' || pieces === 1) return [{ minutes, pieces }];
    const rest = Array.from({ length: pieces - 1 }, () => ({ minutes: 0.005 + 0.02 * random(), pieces: 1 }));
    return [{ minutes, pieces: 1 }, ...rest];
  }).flat();
}
