/** The figures of one kind of fault, run by run. */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { inject } from 'vitest';
import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { type Kind, planOf } from './chaos-plan.ts';
import { closeStations } from './station.ts';

/** What one run of a fault came to. */
export interface Round {
  readonly acknowledged: number;
  readonly lost: number;
  readonly doubled: number;
  /** How much of that is only a count on the screen that is off from the log: above 0 lost, below 0 doubled. */
  readonly countOff?: number;
  /** The screen said what had happened. */
  readonly said?: boolean;
  /** The shop put back what one of its copies had lost. */
  readonly healed?: boolean;
  readonly notes?: readonly string[];
}

export interface KindFigures {
  readonly kind: Kind;
  readonly runs: number;
  readonly acknowledged: number;
  readonly lost: number;
  readonly doubled: number;
  readonly said: number;
  readonly healed: number;
  /** Runs that could not be judged, because the app did not come up or something else broke. */
  readonly broken: number;
  readonly seconds: number;
  readonly notes: readonly string[];
}

/** What the runs of a kind came to, to be held against `allKept`. */
export interface Verdict {
  readonly lost: number;
  readonly doubled: number;
  readonly broken: number;
  /** Runs that did not fit in the time. */
  readonly missed: number;
  /** Runs in which no tap was acknowledged prove nothing. */
  readonly acknowledgedAny: boolean;
  readonly notes: readonly string[];
}

export const allKept = { lost: 0, doubled: 0, broken: 0, missed: 0, acknowledgedAny: true } as const;

const mostNotes = 40;

/**
 * Runs a fault as often as the plan of its kind says (or `runs` rounds of `each`), keeps the figures, and says what it
 * came to.
 * A run that throws is broken and is reported as such; runs that do not fit in the time are missed.
 */
export async function runKind(
  kind: Kind,
  round: (chance: { readonly run: number; readonly random: Random }) => Promise<Round>,
  { runs = planOf(kind).runs, each = 1 }: { runs?: number; each?: number } = {},
): Promise<Verdict> {
  const began = performance.now();
  const seconds = () => Math.round((performance.now() - began) / 1000);
  const random = seededRandom(Number(process.env.SEED) + kind.length);
  const notes: string[] = [];
  const sums = { runs: 0, acknowledged: 0, lost: 0, doubled: 0, said: 0, healed: 0, broken: 0 };
  const note = (run: number, text: string) => notes.push(`run ${run + 1}: ${text}`);
  // Room for the run under way, so that the figures are written before the test is ended from outside.
  const latest = planOf(kind).minutes * 60 - 15;
  for (let run = 0; run < runs && seconds() < latest; run += 1) {
    sums.runs += each;
    try {
      const done = await round({ run, random });
      sums.acknowledged += done.acknowledged;
      sums.lost += done.lost;
      sums.doubled += done.doubled;
      sums.said += done.said ? 1 : 0;
      sums.healed += done.healed ? 1 : 0;
      for (const text of done.notes ?? []) note(run, text);
      if (done.lost + done.doubled > 0) note(run, harm(done));
    } catch (error) {
      sums.broken += 1;
      note(run, `broken: ${String(error).split('\n').slice(0, 3).join(' ')}`);
      await closeStations();
    }
    write({ kind, ...sums, seconds: seconds(), notes: notes.slice(0, mostNotes) });
  }
  const { lost, doubled, broken } = sums;
  const missed = runs * each - sums.runs;
  return {
    lost,
    doubled,
    broken,
    missed,
    acknowledgedAny: sums.acknowledged > 0,
    notes: notes.slice(0, mostNotes),
  };
}

function harm({ lost, doubled, countOff = 0 }: Round): string {
  const where = countOff === 0 ? '' : `: the count on the screen is off by ${countOff} from the log`;
  return `${lost} lost, ${doubled} doubled${where}`;
}

function write(figures: KindFigures): void {
  writeFileSync(join(inject('chaosFolder'), 'figures', `${figures.kind}.json`), JSON.stringify(figures));
}

/** The time that a test of this kind may take, ms. */
export const timeBox = (kind: Kind): number => planOf(kind).minutes * 60_000;
