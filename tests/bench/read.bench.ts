/**
 * How long it takes a browser that was just started to have the whole log in columns, sums and texts checked: beside one
 * record an event, and beside one buffer with the same bytes, which no store can beat.
 */
import type { Bench } from './harness/bench.ts';
import { logProfile } from './harness/log-profiles.ts';
import { inRounds } from './harness/rounds.ts';
import type { Measured } from './harness/row.ts';
import type { KeeperName } from './in-page/read.ts';

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  return [
    await readRow(bench, { id: 'read-100k', events: 100_000, times: 20 }),
    await readRow(bench, { id: 'read-1m', events: 1_000_000, times: 40 }),
  ];
}

async function readRow(
  bench: Bench,
  { id, events, times }: { id: string; events: number; times: number },
): Promise<Measured> {
  const reader = async (keeper: KeeperName) => {
    const profile = await logProfile(bench, { keeper, events });
    return async () => {
      const { took, found } = await bench.inPage({ profile, module: 'read' }, ({ call }) =>
        call<{ took: number; found: number }>('read', { keeper }),
      );
      if (found < events) throw new Error(`${keeper} read ${found} of ${events}`);
      return took;
    };
  };
  return {
    id,
    work: `cold read of ${events.toLocaleString('en')} events into columns; limit: one buffer in one record`,
    unit: 'ms',
    figures: await inRounds(bench.rounds, {
      ours: await reader('ours'),
      limit: await reader('buffer'),
      getAll: await reader('records'),
    }),
    bars: [
      { kind: 'at-most-times', times: 2.5, of: 'limit' },
      { kind: 'times-less', times, than: 'getAll' },
    ],
  };
}
