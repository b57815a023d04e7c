/**
 * Whether the cost of a good piece is what was spent: shops are worked off to their end, the study reckons from their taps,
 * and the truth is added up piece by piece by `work-off.ts`. Money is in minor units; rates and prices are invented.
 */
import * as v from 'valibot';
import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { batchId, partId } from '../../src/domain/log/ids.ts';
import { type CostQuestion, studyCosts } from '../../src/domain/plan/cost/cost-study.ts';
import { pieceMinutes } from '../../src/domain/study/piece-minutes.ts';
import { stageGaps } from '../../src/domain/study/stage-gaps.ts';
import { type CalibrationRow, calibrationRow, meanOf, quantileOf, type Simulation } from './row.ts';
import { stageNamed, tapsOfShop, variantNamed, woodNamed } from './taps-of-shop.ts';
import { trueShop, woods } from './true-shop.ts';
import { openShop, type Tapped, traysToMake } from './work-off.ts';

const hour = 3_600_000;
const hourlyRate = 3000;
const stages = 8;
/** What is fitted where: a blank, a core, a ferrule. */
const fitted = [
  { name: 'blank', stage: 0, most: 800 },
  { name: 'core', stage: 1, most: 400 },
  { name: 'ferrule', stage: 4, most: 300 },
];

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const random = seededRandom(seed);
  const looks = Array.from({ length: shops }, () => lookAt(random));
  const batches = looks.map(({ batch }) => batch);
  const variants = looks.flatMap((look) => look.variants.map(Math.abs));
  const row = (id: string, what: string, value: number, band: CalibrationRow['band']) =>
    calibrationRow({ id, what, value, band, shops });
  return [
    row(
      'cost-bias',
      'end of the batch: cost of a good piece over the true one, less one',
      meanOf(batches),
      [-0.01, 0.01],
    ),
    row(
      'cost-error-90',
      'the same without its sign: what 90 % of the batches stay below',
      quantileOf(batches.map(Math.abs), 0.9),
      [0, 0.03],
    ),
    row(
      'cost-error-variant-90',
      'what 90 % of the variants, of 40 to 70 pieces each, stay below',
      quantileOf(variants, 0.9),
      null,
    ),
  ];
}

/** Errors of the cost of a good piece as parts of the true one: of the batch, and of each variant. */
function lookAt(random: Random): { readonly batch: number; readonly variants: readonly number[] } {
  const shop = trueShop(random);
  const world = openShop(shop, { trays: traysToMake(random), random });
  world.workUntil(Number.POSITIVE_INFINITY);
  const bill = fitted.map((part) => ({ ...part, cost: Math.round(part.most * random()) }));
  const found = Array.from({ length: woods }, (_, wood) => {
    const taps = world.taps.filter((tap) => tap.wood === wood);
    return { wood, good: goodOf(taps), spent: spentOn(taps, bill) };
  });
  const table = tapsOfShop(world.taps, Number.POSITIVE_INFINITY);
  const study = studyCosts(table, {
    ...questionOf(found, bill),
    routes: { stages: Array.from({ length: stages }, (_, at) => stageNamed(at)), byBatch: new Map() },
    minutesOf: pieceMinutes(stageGaps(table)),
  });
  const costs = study.variants.map(({ cost }) => {
    if (cost.kind !== 'known') throw new Error(cost.kind);
    return cost.all.whole;
  });
  const sumOf = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);
  return {
    batch: sumOf(costs) / sumOf(found.map(({ spent }) => spent)) - 1,
    variants: found.map(({ spent }, at) => (costs[at] ?? 0) / spent - 1),
  };
}

type Bill = readonly { readonly name: string; readonly stage: number; readonly cost: number }[];

/** Work on all pieces, and the parts in those that were finished and in those that were scrapped. */
function spentOn(taps: readonly Tapped[], bill: Bill): number {
  const labour = taps.reduce((sum, { worked }) => sum + worked, 0) / hour;
  const parts = taps.reduce((sum, { from, to, stage }) => {
    const isScrapped = from !== null && to.stage === null;
    const isFinished = to.stage === stages;
    const through = isFinished ? stages : isScrapped ? stage : 0;
    return sum + bill.reduce((cost, part) => cost + (part.stage < through ? part.cost : 0), 0);
  }, 0);
  return hourlyRate * labour + parts;
}

function goodOf(taps: readonly Tapped[]) {
  const finished = taps.filter(({ to }) => to.stage === stages);
  const seconds = finished.filter(({ to }) => to.second).length;
  return { firsts: finished.length - seconds, seconds };
}

function questionOf(
  found: readonly { readonly wood: number; readonly good: ReturnType<typeof goodOf> }[],
  bill: Bill,
): CostQuestion {
  const part = (name: string) => v.parse(partId, name);
  return {
    ...{ batch: v.parse(batchId, 'batch'), hourlyRate },
    route: Array.from({ length: stages }, (_, at) => stageNamed(at)),
    variants: found.map(({ wood, good }) => ({
      ...{ variant: variantNamed(wood), species: woodNamed(wood), ...good },
      ...{ firstPrice: 0, secondPrice: 0 },
      bill: bill.map(({ name, stage }) => ({ part: part(name), each: 1, stage: stageNamed(stage) })),
    })),
    unitCosts: bill.map(({ name, cost }) => ({ part: part(name), cost, consumed: false })),
  };
}
