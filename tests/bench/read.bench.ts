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
    ...(await readRows(bench, { id: 'read-100k', events: 100_000, times: 20 })),
    ...(await readRows(bench, { id: 'read-1m', events: 1_000_000, times: 40 })),
  ];
}

async function readRows(
  bench: Bench,
  { id, events, times }: { id: string; events: number; times: number },
): Promise<readonly Measured[]> {
  const ready: number[] = [];
  const reader = async (keeper: KeeperName) => {
    const profile = await logProfile(bench, { keeper, events });
    return async () => {
      const was = await bench.inPage({ profile, module: 'read' }, ({ call }) =>
        call<{ took: number; ready: number; found: number }>('read', { keeper }),
      );
      if (was.found < events) throw new Error(`${keeper} read ${was.found} of ${events}`);
      if (keeper === 'ours') ready.push(was.ready);
      return was.took;
    };
  };
  const figures = await inRounds(bench.rounds, {
    ours: await reader('ours'),
    limit: await reader('buffer'),
    getAll: await reader('records'),
  });
  return [
    {
      id,
      work: `cold read of ${events.toLocaleString('en')} events into columns; limit: one buffer in one record`,
      unit: 'ms',
      figures,
      bars: [
        { kind: 'at-most-times', times: 2.5, of: 'limit' },
        { kind: 'times-less', times, than: 'getAll' },
      ],
    },
    {
      id: `${id}-ready`,
      work: 'the same, until what each event does is worked out, as the row fold begins with it',
      unit: 'ms',
      figures: { ours: ready },
      bars: [],
    },
  ];
}
