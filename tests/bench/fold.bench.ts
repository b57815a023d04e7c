/**
 * Work in progress and first-pass yield per stage and species, and flaws by reason, over the whole log in columns: beside
 * libraries that have it in tables of their own, what each event does worked out, and beside one look at each number.
 */
import type { Bench } from './harness/bench.ts';
import { logProfile } from './harness/log-profiles.ts';
import type { Figures, Measured } from './harness/row.ts';

/** Rounds in one page: all that is prepared is prepared once. */
const rounds = 15;

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const profile = await logProfile(bench, { keeper: 'ours', events: 1_000_000 });
  const figures = await bench.inPage({ profile: bench.copyOf(profile), module: 'fold' }, ({ call }) =>
    call<Figures>('foldInTurns', { rounds }),
  );
  return [
    {
      id: 'fold',
      work: 'work in progress, yield and flaws of 1,000,000 events; limit: a plain pass over all columns',
      unit: 'ms',
      figures,
      bars: [
        { kind: 'at-most-times', times: 1.2, of: 'limit' },
        { kind: 'times-less', times: 60, than: 'Arquero' },
        { kind: 'times-less', times: 25, than: 'DuckDB' },
        { kind: 'times-less', times: 8, than: 'crossfilter2' },
      ],
    },
  ];
}
