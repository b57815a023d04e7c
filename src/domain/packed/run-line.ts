import * as v from 'valibot';
import { checkedLine, readCheckedLine } from '../log/journal-line.ts';
import { type PackedRun, runHeadSchema } from './packed-run.ts';
import { readRun, runText } from './run-text.ts';

/** A run in a file with others: its head, and the bytes of its line, the newline included. */
const indexed = v.object({
  ...runHeadSchema.entries,
  bytes: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
});
const index = v.array(indexed);
export type IndexedRun = Readonly<v.InferOutput<typeof indexed>>;

/** A run as a line of a journal, without the newline. Like every line there it carries its own check. */
export function runLine(run: PackedRun): string {
  return checkedLine('run', runText(run));
}

/** What the lines after it are: so many runs, one after the other. Who reads it need not read those. */
export function indexLine(runs: readonly IndexedRun[]): string {
  return checkedLine('index', JSON.stringify(runs));
}

/** Undefined when the line is no run, or not as it was written. Its chain is not looked at. Never throws. */
export function readRunLine(line: string): PackedRun | undefined {
  const said = readCheckedLine(line);
  return said?.name === 'run' ? readRun(said.value) : undefined;
}

export function readIndexLine(line: string): readonly IndexedRun[] | undefined {
  const said = readCheckedLine(line);
  const read = v.safeParse(index, said?.value);
  return said?.name === 'index' && read.success ? read.output : undefined;
}
