import type { Random } from '../../src/domain/chance/seeded-random.ts';
import type { OutcomeKind } from '../../src/domain/log/event.ts';
import type { ReasonId, SpeciesId, StageId } from '../../src/domain/log/ids.ts';
import { reasonOf, stageOf } from './demo-facts.ts';
import { drawWeighted } from './draw-weighted.ts';

/** Minutes of handwork per piece at each stage; invented for the demo. Of shaping those of the first piece. */
const minutesPerPiece: Readonly<Record<string, number>> = {
  'kit-parts': 0.6,
  'cut-and-bore': 2.8,
  'glue-up': 1.5,
  'rough-turn': 4.2,
  shape: 7,
  sand: 8.4,
  seal: 0.9,
  polish: 3.2,
  'dress-ferrule': 2.6,
  'cut-flat': 2.0,
  wax: 0.8,
  test: 1.4,
  photograph: 0.8,
};

/** Shaping is learnt: each doubling of the pieces takes 85 % of the time, so that a hand comes down to about two minutes. */
const learnt = stageOf('shape');
const learningExponent = Math.log2(0.85);

/** Minutes that a hand needs for its n-th piece at a stage; undefined where it has nothing to do. */
export function minutesOf(stage: StageId, n: number): number | undefined {
  const first = minutesPerPiece[stage];
  return first !== undefined && stage === learnt ? first * n ** learningExponent : first;
}

/** Chance that a piece is flawed; the reason is the stage's usual one. Invented for the demo. */
const usual: Readonly<Record<string, readonly [reason: string, rate: number]>> = {
  'cut-and-bore': ['crack', 0.02],
  'glue-up': ['glue-failed', 0.01],
  'rough-turn': ['tear-out', 0.03],
  shape: ['catch', 0.025],
  sand: ['scratch', 0.02],
  polish: ['finish-run', 0.02],
  'dress-ferrule': ['ferrule-gap', 0.03],
  'cut-flat': ['undersize', 0.01],
  test: ['fails-test', 0.015],
};

/** The wood that tears out at rough turning. */
export const failingWood = 'plum';
const failingRate = 0.2;
/**
 * From this working day on, of `demoDays`, the worn disc of the sanding bench scratches every wood: so much that the change
 * is told at whatever hour the demo is opened, however many other series are watched.
 */
export const discWornFrom = 6;
const wornRate = 0.33;

export interface Visit {
  readonly stage: StageId;
  readonly species: SpeciesId;
  readonly day: number;
}

/** The reason for which this piece is flawed here, or null. */
export function drawFlaw({ stage, species, day }: Visit, random: Random): ReasonId | null {
  const [reason, rate] = usual[stage] ?? ['', 0];
  const worn = stage === stageOf('sand') && day >= discWornFrom;
  const failing = stage === stageOf('rough-turn') && species === failingWood;
  return random() < (worn ? wornRate : failing ? failingRate : rate) ? reasonOf(reason) : null;
}

const outcomeWeights: Readonly<Record<string, Readonly<Record<OutcomeKind, number>>>> = {
  scratch: { mended: 5, second: 3, scrapped: 0, 'sent-back': 2 },
  'finish-run': { mended: 6, second: 1, scrapped: 0, 'sent-back': 3 },
  'ferrule-gap': { mended: 2, second: 6, scrapped: 1, 'sent-back': 1 },
  'tear-out': { mended: 2, second: 2, scrapped: 6, 'sent-back': 0 },
};
const otherwise = { mended: 1, second: 2, scrapped: 6, 'sent-back': 1 };

export function drawOutcome(reason: ReasonId, random: Random): OutcomeKind {
  const weights = outcomeWeights[reason] ?? otherwise;
  const kinds: readonly OutcomeKind[] = ['mended', 'second', 'scrapped', 'sent-back'];
  return drawWeighted(kinds, { weight: (kind) => weights[kind], random }) ?? 'scrapped';
}
