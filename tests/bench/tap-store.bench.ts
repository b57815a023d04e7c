/** What one tap costs in the store: an event kept with strict durability, beside other stores and the bare browser. */
import type { Bench } from './harness/bench.ts';
import { median } from './harness/row.ts';
import type { Keeper } from './in-page/tap-store.ts';

const taps = 100;

export async function measure(bench: Bench) {
  const figures: Record<Keeper, number[]> = { ours: [], limit: [], Dexie: [], PouchDB: [], RxDB: [] };
  for (let round = 0; round < bench.rounds; round += 1) {
    const times = await bench.inPage({ profile: bench.newProfile(), module: 'tap-store' }, ({ call }) =>
      call<Record<Keeper, number[]>>('tapInTurns', { taps }),
    );
    for (const name of Object.keys(figures) as Keeper[]) figures[name].push(median(times[name]));
  }
  return [
    {
      id: 'tap-store',
      work: 'one event appended, strict',
      unit: 'ms',
      figures,
      bars: [
        { kind: 'at-most-times', times: 1.25, of: 'limit' },
        ...['Dexie', 'PouchDB', 'RxDB'].map((than) => ({ kind: 'times-less', times: 1, than })),
      ],
    },
  ];
}
