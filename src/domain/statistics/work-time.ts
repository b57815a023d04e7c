import { normalCdf } from './special-functions.ts';
import { median } from './straight-line.ts';
import type { Worked } from './tap-groups.ts';

/** Minutes of one piece on average, and their standard deviation over that. */
export interface WorkTime {
  readonly mean: number;
  readonly cv: number;
}

/** A stretch beyond this many standard deviations of its log time is a break: one in a hundred without one. */
const cut = 2.33;
const kept = normalCdf(cut);
/** Mean square of a standard normal below the cut: 1 − c φ(c) ÷ Φ(c). */
const keptSquare = 1 - (cut * Math.exp((-cut * cut) / 2)) / (Math.sqrt(2 * Math.PI) * kept);

/** Where the search begins, and how far it may go: hand work lies between, and settles in some twenty rounds. */
const firstCv = 0.5;
const [leastCv, mostCv] = [0.02, 2];
const mostRounds = 100;

/**
 * Mean and spread of the time of a piece, without the breaks among the stretches. Undefined of none.
 *
 * Times of pieces are taken as log-normal, and those of several together too (with the mean n times and the variance n
 * times that of one; L. F. Fenton, The sum of log-normal probability distributions in scatter transmission systems, IRE
 * Transactions on Communications Systems 8 (1960) 57-67; from memory). Stretches beyond the cut are left out, and what
 * a log-normal would have had there is made good: E(X | X ≤ cut) = mean · Φ(c − s) ÷ Φ(c). So the mean is that of all
 * work, not that of its quicker part. Mean and spread are found in turn until they agree. A pause shorter than the cut
 * is not told from a slow piece.
 *
 * @param from where to begin; at the median of the stretches when left out
 */
export function workTime(stretches: readonly Worked[], from?: WorkTime): WorkTime | undefined {
  const rough = median(stretches.map(({ minutes, pieces }) => minutes / pieces));
  if (rough === undefined) return undefined;
  let guess = from ?? { mean: rough, cv: firstCv };
  for (let round = 0; round < mostRounds; round += 1) {
    const next = refined(stretches, guess);
    const isSettled = Math.abs(next.mean / guess.mean - 1) < 1e-9 && Math.abs(next.cv - guess.cv) < 1e-9;
    guess = next;
    if (isSettled) break;
  }
  return guess;
}

/** Whether a stretch is as long as work may be. */
export function isWork(stretch: Worked, time: WorkTime): boolean {
  return strangeness(stretch, time) <= cut;
}

/** How far the log time of a stretch lies from where half of such stretches are, in standard deviations. */
function strangeness({ minutes, pieces }: Worked, { mean, cv }: WorkTime): number {
  const variance = Math.log1p((cv * cv) / pieces);
  return (Math.log(minutes / (mean * pieces)) + variance / 2) / Math.sqrt(variance);
}

function refined(stretches: readonly Worked[], guess: WorkTime): WorkTime {
  const work = stretches.filter((stretch) => isWork(stretch, guess));
  if (work.length === 0) return guess;
  const shareKept = shareKeptAt(guess.cv);
  const minutes = work.reduce((sum, stretch) => sum + stretch.minutes, 0);
  const mean = minutes / work.reduce((sum, { pieces }) => sum + pieces * shareKept(pieces), 0);
  const squares = work.reduce((sum, each) => sum + strangeness(each, { mean, cv: guess.cv }) ** 2, 0);
  const logVariance = (Math.log1p(guess.cv ** 2) * squares) / (work.length * keptSquare);
  return { mean, cv: Math.min(mostCv, Math.max(leastCv, Math.sqrt(Math.expm1(logVariance)))) };
}

/** Share of the mean of so many pieces that is left when stretches beyond the cut are left out. */
function shareKeptAt(cv: number): (pieces: number) => number {
  const known = new Map<number, number>();
  return (pieces) => {
    const share = known.get(pieces) ?? normalCdf(cut - Math.sqrt(Math.log1p((cv * cv) / pieces))) / kept;
    known.set(pieces, share);
    return share;
  };
}
