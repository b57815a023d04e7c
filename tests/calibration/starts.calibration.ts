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
  return confidences.flatMap((confidence, at) => {
    const what = `${wanted} wanted at ${100 * confidence} %: true chance of enough good ones less the chance that is stated`;
    const row = (id: string, when: string, offs: readonly number[][], band: CalibrationRow['band']) =>
      calibrationRow({ id, what: `${when}, ${what}`, value: meanOf(offs[at] ?? []), band, shops });
    return [
      row(`starts-${100 * confidence}`, 'half of the batch done', half, [-0.02, 0.04]),
      // With next to nothing at the last stages it may be too cautious, but not too sure.
      row(`starts-early-${100 * confidence}`, 'trays anywhere along the route', early, [-0.02, 0.2]),
    ];
  });
}

/** For each confidence, of each wood, how far the true chance of the starts that are advised lies above the stated one. */
function lookAt({ done, seed, shops }: Simulation & { done: number }): readonly number[][] {
  const random = seededRandom(seed);
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
        offs[of]?.push(binomialUpperTail(wanted, starts, truth) - chance);
      }
    }
  }
  return offs;
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
