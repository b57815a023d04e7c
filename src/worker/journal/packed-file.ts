import { entryLine } from '../../domain/log/journal-line.ts';
import type { Parcel } from '../../domain/packed/parcel.ts';
import { indexLine, readIndexLine, runLine } from '../../domain/packed/run-line.ts';
import { headOfRun } from '../../domain/packed/stretch.ts';
import type { Folder } from './folder.ts';
import type { Placed } from './placed.ts';
import { bytesOf, textOf } from './whole-lines.ts';

/**
 * A packed file: a line that is the index of its runs, the runs, each on a line, and then lines as in any segment. It is
 * written at once and never added to.
 */
export const isPacked = (name: string) => name.startsWith('packed-');

/** An index of some 16 runs. */
const firstStretch = 4096;
const newline = 0x0a;

/** Where the runs of a packed file lie; undefined when its index does not check, or the file is too short for it. */
export async function readIndex(
  folder: Folder,
  { name, to }: { name: string; to: number },
): Promise<{ readonly runs: readonly Placed[]; readonly end: number } | undefined> {
  for (let size = firstStretch; ; size *= 2) {
    const bytes = await folder.read(name, { from: 0, to: Math.min(size, to) });
    const length = bytes.indexOf(newline);
    if (length === -1 && bytes.length === size && size < to) continue;
    const index = readIndexLine(textOf(bytes.subarray(0, Math.max(0, length))));
    let end = length + 1;
    const runs = (index ?? []).map(({ bytes: long, ...head }): Placed => {
      end += long;
      return { file: name, from: end - long, to: end - 1, head };
    });
    return index && end <= to ? { runs, end } : undefined;
  }
}

/** The bytes of a file for a parcel, and further lines. It is a packed one if there are runs. */
export function packedBytes(
  { runs, entries }: Parcel,
  notes: readonly string[] = [],
): Uint8Array<ArrayBuffer> {
  const lines = runs.map((run) => bytesOf([runLine(run)]));
  const index = runs.map((run, at) => ({ ...headOfRun(run), bytes: lines[at]?.length ?? 0 }));
  const parts = [
    ...(runs.length > 0 ? [bytesOf([indexLine(index)]), ...lines] : []),
    bytesOf([...entries.map(entryLine), ...notes]),
  ];
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
