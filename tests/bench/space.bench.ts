/** What a sealed event takes on the disk: files of the database, as the browser leaves them when it is closed. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import type { Bench } from './harness/bench.ts';
import { logProfile, until } from './harness/log-profiles.ts';
import type { Measured } from './harness/row.ts';

const events = 1_000_000;
const tapped = 131_072;

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const empty = bytesIn(await logProfile(bench, { keeper: 'ours', events: 0 }));
  const full = bytesIn(await logProfile(bench, { keeper: 'ours', events }));
  const later = bench.newProfile();
  const sealed = await bench.inPage({ profile: later, module: 'seal' }, ({ call }) =>
    call<number>('sealLog', { events: tapped, until }),
  );
  return [
    {
      id: 'space',
      work: 'a sealed event on the disk, of 1,000,000 that were restored',
      unit: 'B',
      figures: { ours: [(full - empty) / events] },
      bars: [{ kind: 'at-most', value: 25 }],
    },
    {
      id: 'space-tapped',
      work: 'the same, tapped and then sealed, with what the browser has yet to clear away of its record',
      unit: 'B',
      figures: { ours: [(bytesIn(later) - empty) / sealed] },
      bars: [],
    },
  ];
}

/** Bytes that the databases of a closed profile take. */
function bytesIn(profile: string): number {
  return readdirSync(join(profile, 'Default', 'IndexedDB'), { recursive: true, withFileTypes: true })
    .filter((file) => file.isFile())
    .reduce((sum, { parentPath, name }) => sum + statSync(join(parentPath, name)).size, 0);
}
