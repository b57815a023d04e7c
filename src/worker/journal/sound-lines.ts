import type { Entry } from '../../domain/log/chain.ts';
import { readJournalLine } from '../../domain/log/journal-line.ts';
import type { LogEvent } from '../../domain/log/read-event.ts';
import type { PackedRun } from '../../domain/packed/packed-run.ts';
import { readIndexLine, readRunLine } from '../../domain/packed/run-line.ts';
import { entriesOf } from '../../domain/packed/unpack-run.ts';
import type { Folder } from './folder.ts';
import { wholeLines } from './whole-lines.ts';

/** What a line says when nothing is taken on trust: every link is summed up anew. */
type SoundLine =
  | { readonly kind: 'entries'; readonly entries: readonly Entry[]; readonly run?: PackedRun }
  | { readonly kind: 'act'; readonly act: string; readonly json: string }
  | { readonly kind: 'settled'; readonly act: string }
  | { readonly kind: 'index' }
  | { readonly kind: 'unreadable' };

interface FileToRead {
  readonly name: string;
  /** Its size, in bytes. */
  readonly size: number;
  /** Called now and then during long work. */
  readonly alive: () => void;
}

/** All lines of a file; a torn end comes last, as unreadable. */
export async function* soundLines(
  folder: Folder,
  { name, size, alive }: FileToRead,
): AsyncGenerator<SoundLine, void> {
  let upTo = 0;
  for await (const lines of wholeLines(folder, { name, from: 0, to: size })) {
    for (const { text, to } of lines) {
      upTo = to + 1;
      if (text !== '') yield soundLine(text, alive);
      alive();
    }
  }
  if (upTo < size) yield { kind: 'unreadable' };
}

function soundLine(text: string, alive: () => void): SoundLine {
  if (text.startsWith('{"run"')) return soundRun(text, alive) ?? { kind: 'unreadable' };
  if (text.startsWith('{"index"')) return { kind: readIndexLine(text) ? 'index' : 'unreadable' };
  const said = readJournalLine(text);
  if (said.kind !== 'entry') return said;
  const { prev, link, json } = said;
  return { kind: 'entries', entries: [{ prev, link, event: JSON.parse(json) as LogEvent }] };
}

/** The run on a line with its entries; undefined when it is not whole, or its chain does not hold. */
export function soundRun(
  text: string,
  alive: () => void,
): { readonly kind: 'entries'; readonly entries: readonly Entry[]; readonly run: PackedRun } | undefined {
  const run = readRunLine(text);
  try {
    return run && { kind: 'entries', entries: entriesOf(run, alive), run };
  } catch {
    return undefined;
  }
}
