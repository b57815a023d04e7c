import type { Entry } from '../domain/log/chain.ts';
import { chainsOf, packLong } from '../domain/packed/pack-long.ts';
import { packRun } from '../domain/packed/pack-run.ts';
import type { PackedRun, RunHead } from '../domain/packed/packed-run.ts';
import type { Parcel } from '../domain/packed/parcel.ts';
import { headOfRun } from '../domain/packed/stretch.ts';
import { entriesOf } from '../domain/packed/unpack-run.ts';
import type { Bytes } from '../store/backup/sealing-keys.ts';
import type { Lane } from './exchange.ts';
import { headOfEntries, logBody } from './log-body.ts';
import { packBody } from './pack-body.ts';
import { wrapped } from './wrapping.ts';

/** Brokers usually take a megabyte at a time (bytes). */
const mostBytes = 512_000;
/** Entries that go as lines in one message: some 100 kB. */
const mostLines = 200;

/** A message of entries, before it is sealed. */
export interface Draft {
  readonly kind: 'log1' | 'pack1';
  readonly head: RunHead;
  readonly body: Bytes;
  readonly lane: Lane;
}

/** A parcel as messages: long chains as runs, on a lane by their length, and the others as lines. Throws when a run is not whole. */
export function* draftsOf(parcel: Parcel, laneOf: (run: RunHead) => Lane = laneByLength): Generator<Draft> {
  const { runs, entries } = packLong(parcel.entries);
  for (const run of [...parcel.runs, ...runs]) yield* draftsOfRun(run, laneOf);
  for (const chain of chainsOf(entries))
    for (let from = 0; from < chain.length; from += mostLines) {
      const part = chain.slice(from, from + mostLines).map(({ entry }) => entry);
      yield* draftsOfLines(part, laneOf);
    }
}

function* draftsOfRun(run: PackedRun, laneOf: (run: RunHead) => Lane): Generator<Draft> {
  const body = wrapped(packBody(run));
  if (body.length <= mostBytes || run.entries < 2) {
    const head = headOfRun(run);
    yield { kind: 'pack1', head, body, lane: laneOf(head) };
    return;
  }
  const entries = entriesOf(run).map((entry) => ({ entry }));
  const half = Math.ceil(entries.length / 2);
  yield* draftsOfRun(packRun(entries.slice(0, half)), laneOf);
  yield* draftsOfRun(packRun(entries.slice(half)), laneOf);
}

function* draftsOfLines(entries: readonly Entry[], laneOf: (run: RunHead) => Lane): Generator<Draft> {
  const body = wrapped(logBody(entries));
  if (body.length <= mostBytes || entries.length < 2) {
    const head = headOfEntries(entries);
    yield { kind: 'log1', head, body, lane: laneOf(head) };
    return;
  }
  const half = Math.ceil(entries.length / 2);
  yield* draftsOfLines(entries.slice(0, half), laneOf);
  yield* draftsOfLines(entries.slice(half), laneOf);
}

/** The shortest runs of a lane that are not folded again soon. */
function laneByLength({ entries }: RunHead): Lane {
  if (entries < 256) return 'ev';
  if (entries < 2048) return 'run.1';
  return entries < 16_384 ? 'run.2' : 'run.3';
}
