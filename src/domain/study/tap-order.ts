import { beginning, type TapRows } from './tap-rows.ts';
import { emptyColumns, type TapColumns, type TapTable } from './tap-table.ts';
import { takenBack } from './voids-in-force.ts';

/** Puts taps in their order, each once, and leaves out what was taken back. */
export function inOrder(rows: TapRows): TapTable {
  const rank = ranksOf(rows);
  const { kept, begins, wall, tick } = oneByOne(rows, rowsInForce(rows, rank));
  // Taps of one stamp stay as they are, by station and number: the sort is stable.
  kept.sort((a, b) => at(wall, a) - at(wall, b) || at(tick, a) - at(tick, b));
  const { kinds, trays, days, persons, stations } = rows;
  const columns = picked({ ...rows.columns, begins }, kept);
  return { length: kept.length, kinds, trays, days, persons, stations, columns };
}

type Numbers = Float64Array | Uint32Array | Int32Array | Uint8Array;
const at = (numbers: Numbers, row: number) => numbers[row] ?? 0;

/** Of each row where its station comes among all by name: that is the same on every tablet. */
function ranksOf({ stations, columns, length }: TapRows): Uint32Array {
  const sorted = stations.toSorted((a, b) => (a < b ? -1 : 1));
  const rank = stations.map((station) => sorted.indexOf(station));
  return columns.station.slice(0, length()).map((station) => rank[station] ?? 0);
}

/** Rows station by station, each in the order of its numbers. */
function rowsInForce({ stations, columns, seq, voids, length }: TapRows, rank: Uint32Array): number[] {
  const isTakenBack = takenBack(voids);
  const found: number[] = [];
  for (let row = 0; row < length(); row += 1) {
    const station = stations[at(columns.station, row)];
    if (station !== undefined && !isTakenBack({ station, seq: at(seq, row) })) found.push(row);
  }
  // Runs come in their order, and this sort is quick where most is sorted.
  return found.sort((a, b) => at(rank, a) - at(rank, b) || at(seq, a) - at(seq, b));
}

/**
 * Goes through the taps of each station: leaves out what comes twice, tells which begin a spell, and gives each a stamp
 * that is not before the one of the tap before it, should the clock of a station have run back all the same.
 */
function oneByOne({ columns, seq, tick }: TapRows, sorted: readonly number[]) {
  const length = columns.station.length;
  const stamps = { wall: new Float64Array(length), tick: new Float64Array(length) };
  const begins = new Uint8Array(length);
  const kept: number[] = [];
  let last = -1;
  let begun = false;
  for (const row of sorted) {
    const isSameStation = last >= 0 && at(columns.station, row) === at(columns.station, last);
    if (isSameStation && at(seq, row) === at(seq, last)) continue;
    const [wall, ticks] = [at(columns.wall, row), at(tick, row)];
    const isLater =
      !isSameStation ||
      wall > at(stamps.wall, last) ||
      (wall === at(stamps.wall, last) && ticks >= at(stamps.tick, last));
    stamps.wall[row] = isLater ? wall : at(stamps.wall, last);
    stamps.tick[row] = isLater ? ticks : at(stamps.tick, last);
    begun &&= isSameStation;
    last = row;
    if (columns.kind[row] === beginning) {
      begun = true;
      continue;
    }
    if (begun) begins[row] = 1;
    begun = false;
    kept.push(row);
  }
  return { kept, begins, ...stamps };
}

function picked(from: TapColumns, rows: readonly number[]): TapColumns {
  const to = emptyColumns(rows.length);
  for (const name of Object.keys(to) as (keyof TapColumns)[]) {
    const [source, target] = [from[name], to[name]];
    for (let place = 0; place < rows.length; place += 1) target[place] = at(source, rows[place] ?? 0);
  }
  return to;
}
