/** Works the same plan off in the app's way, on a heap, and in one or two workers; all must come to the same. */

import { openForecast } from '../../../src/app/forecast.ts';
import { compiledPlan } from '../../../src/domain/plan/forecast/compiled-plan.ts';
import type { ForecastQuestion } from '../../../src/domain/plan/forecast/forecast.ts';
import { replicator } from '../../../src/domain/plan/forecast/replicator.ts';
import { joinedRuns, type Runs } from '../../../src/domain/plan/forecast/runs.ts';
import { onHeap } from './forecast-on-heap.ts';
import { benchShop, marks } from './forecast-shop.ts';

const seed = 20260301;
/** Rounds until code that is run often is compiled as such. */
const unmeasured = 3;
/** As the app works them off. */
const slice = 10;

/** Milliseconds for so many replications in each round. Throws when one has another end on the heap. */
export function onOneThread({ rounds, replications }: { rounds: number; replications: number }) {
  const plan = benchShop();
  const run = replicator({ plan, marks, seed, replications });
  const heap = onHeap(compiledPlan(plan), marks);
  const figures = { ours: [] as number[], flatqueue: [] as number[] };
  for (let round = -unmeasured; round < rounds; round += 1) {
    const start = performance.now();
    const parts: Runs[] = [];
    for (let at = 0; at < replications; at += slice) parts.push(run(at, Math.min(at + slice, replications)));
    const between = performance.now();
    const others = Array.from({ length: replications }, (_, at) => heap(seed, at));
    const end = performance.now();
    const { doneAt, good } = joinedRuns(parts);
    const each = good.length / replications;
    const isSame = others.every(
      (other, at) =>
        other.doneAt === doneAt[at] &&
        other.good.every((pieces, place) => pieces === good[at * each + place]),
    );
    if (!isSame) throw new Error('a replication has another end on the heap');
    if (round < 0) continue;
    figures.ours.push(between - start);
    figures.flatqueue.push(end - between);
  }
  return figures;
}

/** Works in one worker, as on a tablet of two cores, on one question after another until the page is closed. */
export async function keepForecasting(): Promise<void> {
  const door = openForecast({ workers: 1 });
  const question = { plan: benchShop(), marks, seed, replications: 10_000, confidence: 0.9 };
  const goOn = (): Promise<void> => door.ask(question).then(goOn);
  void goOn();
}

/** The same with workers, from the question to its answer. */
export async function inWorkers({ rounds, replications }: { rounds: number; replications: number }) {
  const question: ForecastQuestion = { plan: benchShop(), marks, seed, replications, confidence: 0.9 };
  const doors = { ours: openForecast({ workers: 2 }), 'one worker': openForecast({ workers: 1 }) };
  const figures = { ours: [] as number[], 'one worker': [] as number[] };
  for (let round = -1; round < rounds; round += 1) {
    const answers: string[] = [];
    for (const [name, door] of Object.entries(doors)) {
      const start = performance.now();
      answers.push(JSON.stringify(await door.ask(question)));
      if (round >= 0) figures[name as keyof typeof figures].push(performance.now() - start);
    }
    if (answers[0] !== answers[1]) throw new Error('two workers come to another answer');
  }
  for (const door of Object.values(doors)) door.close();
  return figures;
}
