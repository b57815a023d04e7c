import * as v from 'valibot';
import { largestInColumn } from './column.ts';
import { mostInRun } from './pack-run.ts';
import { type ColumnName, type Columns, columnNames, type PackedRun, runHeadSchema } from './packed-run.ts';

/** The columns that go into a file: the names of taps mean something on their tablet alone. */
const written = columnNames.filter((name) => name !== 'act');

/**
 * A run as JSON on one line, for files. A column is an array of whole numbers, an empty one where all are 0; that of wall
 * times holds how much each is more than the one before it.
 */
export function runText({ columns, extras, ...run }: PackedRun): string {
  const arrays = Object.fromEntries(written.map((name) => [name, numbersOf(columns, name)]));
  return JSON.stringify({ ...run, columns: arrays, extras: Array.from(extras) });
}

function numbersOf(columns: Columns, name: ColumnName): readonly number[] {
  const column = columns[name];
  if (column.every((each) => each === 0)) return [];
  return Array.from(column, (each, at) => (name === 'wall' && at > 0 ? each - (column[at - 1] ?? 0) : each));
}

const texts = v.array(v.string());
const isWhole = (value: unknown) => Number.isSafeInteger(value);
/** Looked at in one go: a schema for each of some 100,000 numbers would take ten times as long. */
const wholeNumbers = v.custom<readonly number[]>((value) => Array.isArray(value) && value.every(isWhole));

const schema = v.object({
  ...runHeadSchema.entries,
  entries: v.pipe(runHeadSchema.entries.entries, v.maxValue(mostInRun)),
  shapes: texts,
  days: texts,
  persons: texts,
  trays: texts,
  base: v.pipe(v.number(), v.safeInteger(), v.minValue(0)),
  columns: v.record(v.string(), wholeNumbers),
  extras: wholeNumbers,
});

/**
 * Reads a run from what its line parses to; undefined when it is none. Its numbers are of the right kind and number then;
 * whether it says anything that a log may hold is another question: see `problemsOfRun`. Never throws.
 */
export function readRun(raw: unknown): PackedRun | undefined {
  const read = v.safeParse(schema, raw);
  if (!read.success) return undefined;
  const { columns: arrays, extras, ...run } = read.output;
  const columns: Partial<Record<ColumnName, Columns[ColumnName]>> = { act: new Uint8Array(run.entries) };
  for (const name of written) {
    const column = columnOf(name, { numbers: arrays[name] ?? [], length: run.entries });
    if (!column) return undefined;
    columns[name] = column;
  }
  return { ...run, columns: columns as Columns, extras: Float64Array.from(extras) };
}

function columnOf(
  name: ColumnName,
  { numbers, length }: { numbers: readonly number[]; length: number },
): Columns[ColumnName] | undefined {
  const column = new Uint32Array(length);
  if (numbers.length === 0) return column;
  if (numbers.length !== length) return undefined;
  let sum = 0;
  for (let at = 0; at < length; at += 1) {
    sum = (name === 'wall' ? sum : 0) + (numbers[at] ?? 0);
    if (sum < 0 || sum > largestInColumn) return undefined;
    column[at] = sum;
  }
  return column;
}
