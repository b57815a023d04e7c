/** Libraries that add tables up, each with its own table of the same rows, made ready to be asked. */
import { AsyncDuckDB, VoidLogger } from '@duckdb/duckdb-wasm';
import duckDbWorker from '@duckdb/duckdb-wasm/dist/duckdb-browser-eh.worker.js?url';
import duckDbWasm from '@duckdb/duckdb-wasm/dist/duckdb-eh.wasm?url';
import { op, table } from 'arquero';
import crossfilter from 'crossfilter2';
import type { Groups } from './fold-answer.ts';
import { type TallyRows, textColumns } from './tally-rows.ts';

export type Ask = () => Groups | Promise<Groups>;

export function askArquero(tally: TallyRows): Ask {
  const rows = table({ ...textColumns(tally), ...tally.amounts });
  const visited = { first: op.sum('first'), clean: op.sum('clean') };
  const moved = (stage: 'origin' | 'target') =>
    rows
      .groupby({ stage: `d => d.${stage}` }, 'species')
      .rollup({ pieces: op.sum('pieces') })
      .objects() as Groups['arrived'];
  return () => ({
    arrived: moved('target'),
    left: moved('origin'),
    visits: rows.groupby('stage', 'species').rollup(visited).objects() as Groups['visits'],
    flaws: rows
      .groupby('reason')
      .rollup({ flawed: op.sum('flawed') })
      .objects() as Groups['flaws'],
  });
}

/** In its worker, without threads, which pages that are not isolated cannot have. */
export async function askDuckDb(tally: TallyRows): Promise<Ask> {
  const db = new AsyncDuckDB(new VoidLogger(), new Worker(duckDbWorker));
  await db.instantiate(duckDbWasm);
  const connection = await db.connect();
  const bytes = table({ ...textColumns(tally), ...tally.amounts }).toArrowIPC({ format: 'stream' });
  await connection.insertArrowFromIPCStream(bytes, { name: 'tally' });
  const query = async <Row>(sql: string) =>
    (await connection.query(sql)).toArray().map((row) => row.toJSON() as Row);
  const moved = (stage: 'origin' | 'target') =>
    query<Groups['arrived'][number]>(
      `select ${stage} as stage, species, sum(pieces)::int as pieces from tally group by all`,
    );
  return async () => ({
    arrived: await moved('target'),
    left: await moved('origin'),
    visits: await query(
      'select stage, species, sum(first)::int as first, sum(clean)::int as clean from tally group by all',
    ),
    flaws: await query('select reason, sum(flawed)::int as flawed from tally group by all'),
  });
}

/** Its dimensions and groups, which are its indexes, are there already: a question only adds up. */
export function askCrossfilter({ rows, codes, amounts, names }: TallyRows): Ask {
  const { species, origin, target, stage, reason } = codes;
  const { pieces, first, clean, flawed } = amounts;
  const filter = crossfilter(Array.from({ length: rows }, (_, row) => row));
  const grouped = (key: (row: number) => number) =>
    filter.dimension(key).group<number, { sum: number; more: number }>();
  const at = (stages: Uint8Array) => (row: number) => (stages[row] ?? 0) * 256 + (species[row] ?? 0);
  const groups = {
    arrived: grouped(at(target)),
    left: grouped(at(origin)),
    visits: grouped(at(stage)),
    flaws: grouped((row) => reason[row] ?? 0),
  };
  const sums = (group: ReturnType<typeof grouped>, amount: Int32Array, further?: Int32Array) =>
    group
      .reduce(
        (sum, row) => {
          sum.sum += amount[row] ?? 0;
          if (further) sum.more += further[row] ?? 0;
          return sum;
        },
        (sum) => sum,
        () => ({ sum: 0, more: 0 }),
      )
      .all()
      .map(({ key, value }) => ({
        stage: names.stage[key >> 8] ?? '',
        species: names.species[key & 255] ?? '',
        reason: names.reason[key] ?? '',
        ...value,
      }));
  const movedTo = (group: ReturnType<typeof grouped>) =>
    sums(group, pieces).map(({ sum, ...of }) => ({ ...of, pieces: sum }));
  return () => ({
    arrived: movedTo(groups.arrived),
    left: movedTo(groups.left),
    visits: sums(groups.visits, first, clean).map(({ sum, more, ...of }) => ({
      ...of,
      first: sum,
      clean: more,
    })),
    flaws: sums(groups.flaws, flawed).map(({ reason, sum }) => ({ reason, flawed: sum })),
  });
}
