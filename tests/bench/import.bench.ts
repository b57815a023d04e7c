/**
 * How long a backup takes to come in, from the file to the disk, each line judged and its link checked, into an empty
 * store: beside the same lines, unpacked already and not checked, as one record each in one strict transaction, and as rows
 * of SQLite in one transaction.
 */
import type { Bench } from './harness/bench.ts';
import { until } from './harness/log-profiles.ts';
import type { Measured } from './harness/row.ts';
import type { Took } from './in-page/import.ts';

const events = 100_000;

export async function measure(bench: Bench): Promise<readonly Measured[]> {
  const rounds: Took[] = [];
  for (let turn = 0; turn < bench.rounds; turn += 1)
    rounds.push(
      await bench.inPage({ profile: bench.newProfile(), module: 'import' }, ({ call }) =>
        call<Took>('importInTurns', { events, until, turn }),
      ),
    );
  return [
    {
      id: 'import',
      work: `a backup of ${events.toLocaleString('en')} events restored`,
      unit: 'ms',
      figures: {
        ours: rounds.map(({ ours }) => ours),
        'one record each': rounds.map(({ oneRecordEach }) => oneRecordEach),
        SQLite: rounds.map(({ SQLite }) => SQLite),
      },
      bars: [
        { kind: 'times-less', times: 50, than: 'one record each' },
        { kind: 'times-less', times: 8, than: 'SQLite' },
      ],
    },
    {
      id: 'import-read',
      work: 'of it: unpacked, judged and handed over by the worker',
      unit: 'ms',
      figures: { ours: rounds.map(({ oursRead }) => oursRead) },
      bars: [],
    },
  ];
}
