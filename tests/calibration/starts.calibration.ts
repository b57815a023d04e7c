/** Whether enough good ones come of the starts that are advised, while every wood has few pieces. */
import { seededRandom } from '../../src/domain/chance/seeded-random.ts';
import type { SpeciesId, StageId } from '../../src/domain/log/ids.ts';
import { smallestStart } from '../../src/domain/plan/starts/smallest-start.ts';
import { stageBeliefs, type WoodTrials } from '../../src/domain/plan/starts/stage-beliefs.ts';
import { binomialUpperTail } from '../../src/domain/statistics/special-functions.ts';
import { type CalibrationRow, calibrationRow, meanOf, type Simulation } from './row.ts';
import { type SimulatedWood, simulatedWoods } from './simulated-woods.ts';

const wanted = 40;
const confidences = [0.8, 0.9, 0.95];

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const half = lookAt({ done: 0.5, seed, shops });
  const early = lookAt({ done: 0, seed: seed + 1, shops });
  const enough = calibrationRow({
    id: 'starts-enough-90',
    what: `half of the batch done, ${wanted} wanted at 90 %: how often enough good ones come`,
    ...{ value: meanOf(half.enough[confidences.indexOf(0.9)] ?? []), band: [0.88, 0.93], shops },
  });
  const rows = confidences.flatMap((confidence, at) => {
    const what = `${wanted} wanted at ${100 * confidence} %: true chance of enough good ones less the chance that is stated`;
    const row = (id: string, when: string, offs: readonly number[][], band: CalibrationRow['band']) =>
      calibrationRow({ id, what: `${when}, ${what}`, value: meanOf(offs[at] ?? []), band, shops });
    return [
      row(`starts-${100 * confidence}`, 'half of the batch done', half.offs, [-0.02, 0.04]),
      // With next to nothing at the last stages it may be too cautious, but not too sure.
      row(`starts-early-${100 * confidence}`, 'trays anywhere along the route', early.offs, [-0.02, 0.2]),
    ];
  });
  return [...rows, enough];
}

interface Chances {
  /** For each confidence, of each wood: the true chance that enough come of the starts that are advised. */
  readonly enough: readonly number[][];
  /** The same less the stated chance. */
  readonly offs: readonly number[][];
}

function lookAt({ done, seed, shops }: Simulation & { done: number }): Chances {
  const random = seededRandom(seed);
  const enough = confidences.map((): number[] => []);
  const offs = confidences.map((): number[] => []);
  for (let shop = 0; shop < shops; shop += 1) {
    const woods = simulatedWoods({ done, random });
    const route = (woods[0]?.steps ?? []).map((_, at) => `stage-${at}` as StageId);
    const beliefs = stageBeliefs(
      woods.map((wood, at) => trialsOf(wood, { at, route })),
      { route, goal: 'finished' },
    );
    for (const [at, { truth }] of woods.entries()) {
      const stages = beliefs(nameOf(at)).map((rate) => ({ rate, standing: 0 }));
      for (const [of, confidence] of confidences.entries()) {
        const start = smallestStart({ wanted, finished: 0, stages }, { confidence });
        if (start.kind !== 'starts') continue;
        const { starts, chance } = start.point;
        const trueChance = binomialUpperTail(wanted, starts, truth);
        enough[of]?.push(trueChance);
        offs[of]?.push(trueChance - chance);
      }
    }
  }
  return { enough, offs };
}

const nameOf = (at: number) => `wood-${at}` as SpeciesId;

function trialsOf(
  { steps }: SimulatedWood,
  { at, route }: { readonly at: number; readonly route: readonly StageId[] },
): WoodTrials {
  return {
    group: nameOf(at),
    stages: steps.flatMap((step, of) => {
      const stage = route[of];
      const firstPass = { of: step.atRisk, out: step.atRisk - step.lost };
      return stage ? [{ stage, finished: step, firsts: step, firstPass, repeats: 0 }] : [];
    }),
  };
}
