/** Adds the log in the app's store up, in the app's columns and in tables of libraries, which all hold it already. */
import { foldTables } from '../../../src/domain/packed/fold.ts';
import { logColumns } from '../../../src/domain/packed/log-columns.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { columnNames } from '../../../src/domain/packed/packed-run.ts';
import { answerOfGroups, answerOfTables } from './fold-answer.ts';
import { type Ask, askArquero, askCrossfilter, askDuckDb } from './fold-peers.ts';
import { openLog } from './open-log.ts';
import { tallyRows } from './tally-rows.ts';

export const contestants = ['ours', 'limit', 'Arquero', 'DuckDB', 'crossfilter2'] as const;
type Figures = Record<(typeof contestants)[number], number[]>;

/** Milliseconds that each needed in each round. Throws when two do not say the same. */
export async function foldInTurns({ rounds }: { rounds: number }): Promise<Figures> {
  const log = await openLog('log');
  const { runs } = await log.parcel();
  log.close();
  const columns = logColumns(runs.map((run) => ({ run })));
  const rows = tallyRows(runs);
  const answer = answerOfTables(foldTables(columns));
  const peers: Record<string, Ask> = {
    Arquero: askArquero(rows),
    DuckDB: await askDuckDb(rows),
    crossfilter2: askCrossfilter(rows),
  };
  for (const [name, ask] of Object.entries(peers))
    if (answerOfGroups(await ask()) !== answer) throw new Error(`${name} comes to other sums`);
  const works = { ours: () => foldTables(columns), limit: () => passOver(runs), ...peers };

  const figures: Figures = { ours: [], limit: [], Arquero: [], DuckDB: [], crossfilter2: [] };
  for (let round = -unmeasured; round < rounds; round += 1)
    for (const [name, work] of Object.entries(works)) {
      // What the one before has left to be collected is not the next one's to pay for.
      await new Promise((resolve) => setTimeout(resolve, betweenTurns));
      const start = performance.now();
      await work();
      if (round >= 0) figures[name as keyof Figures].push(performance.now() - start);
    }
  return figures;
}

/** Rounds until code that is run often is compiled as such. */
const unmeasured = 5;
const betweenTurns = 100;

/** Looks at every number once and does the least with it. */
function passOver(runs: readonly PackedRun[]): number {
  let sum = 0;
  for (const { columns, extras } of runs) {
    for (const name of columnNames) {
      const column = columns[name];
      if (column instanceof Uint8Array) sum += sumOfBytes(column);
      else if (column instanceof Uint16Array) sum += sumOfShorts(column);
      else sum += sumOfWords(column);
    }
    sum += sumOfDoubles(extras);
  }
  return sum;
}

// A loop for each kind of column: one for all kinds would be several times slower.
function sumOfBytes(column: Uint8Array): number {
  let sum = 0;
  for (let at = 0; at < column.length; at += 1) sum += column[at] ?? 0;
  return sum;
}

function sumOfShorts(column: Uint16Array): number {
  let sum = 0;
  for (let at = 0; at < column.length; at += 1) sum += column[at] ?? 0;
  return sum;
}

function sumOfWords(column: Uint32Array): number {
  let sum = 0;
  for (let at = 0; at < column.length; at += 1) sum += column[at] ?? 0;
  return sum;
}

function sumOfDoubles(column: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < column.length; at += 1) sum += column[at] ?? 0;
  return sum;
}
