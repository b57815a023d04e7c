/** What one event costs that is added to every sum of a shop that lives, beside the same additions in flat counters. */
import type { Bench } from './harness/bench.ts';
import { until } from './harness/log-profiles.ts';
import type { Figures, Measured } from './harness/row.ts';

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const sizes = { before: 80_000, events: 20_000, until, rounds: 9 };
  const figures = await bench.inPage({ profile: bench.newProfile(), module: 'apply' }, ({ call }) =>
    call<Figures>('applyInTurns', sizes),
  );
  return [
    {
      id: 'apply',
      work: 'one event applied to all sums of a shop of 80,000 events; limit: the same additions on flat counters',
      unit: 'µs',
      figures,
      bars: [{ kind: 'at-most-times', times: 4, of: 'limit' }],
    },
  ];
}
