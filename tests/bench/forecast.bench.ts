/** How fast replications of a forecast are: beside the same model on a heap, and in two workers beside one. */
import type { Bench } from './harness/bench.ts';
import type { Figures, Measured } from './harness/row.ts';

const replications = 2000;
/** The plan is got ready in every worker: what is measured is many replications. */
const inWorkers = 20_000;

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const found = await bench.inPage({ profile: bench.newProfile(), module: 'forecast' }, async ({ call }) => ({
    thread: await call<Figures>('onOneThread', { rounds: 15, replications }),
    workers: await call<Figures>('inWorkers', { rounds: 5, replications: inWorkers }),
  }));
  return [
    {
      id: 'forecast',
      work: `${replications} replications of a shop with 360 pieces in 40 trays, 14 stages, two people`,
      unit: 'ms',
      figures: found.thread,
      bars: [{ kind: 'times-less', times: 2, than: 'flatqueue' }],
    },
    {
      id: 'forecast-workers',
      work: `${inWorkers} replications of the same in two workers, from question to answer`,
      unit: 'ms',
      figures: found.workers,
      bars: [{ kind: 'times-less', times: 1.7, than: 'one worker' }],
    },
  ];
}
