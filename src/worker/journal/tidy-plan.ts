import { mostInRun } from '../../domain/packed/pack-run.ts';
import type { Contents } from './contents.ts';
import { isPacked } from './packed-file.ts';

/** A file of the journal, and how many entries lie in it. */
export interface FileStock {
  readonly name: string;
  readonly entries: number;
}

/** What is known to lie in each of these files. */
export function stockOf({ young, runs }: Contents, names: readonly string[]): readonly FileStock[] {
  const entries = new Map<string, number>();
  for (const { file, head } of [...young.values(), ...runs])
    entries.set(file, (entries.get(file) ?? 0) + head.entries);
  return names.map((name) => ({ name, entries: entries.get(name) ?? 0 }));
}

/** So many segments of lines may lie about, with so many entries between them, and so many small packed files. */
const mostSegments = 8;
const mostYoung = 4096;
const mostSmall = 16;

/**
 * Which files are to be folded: the segments when there are many of them or much in them, and with them packed files no
 * larger than what is folded anyway, like digits of a binary counter. So an entry is written a few times in its life.
 */
export function toFold(files: readonly FileStock[]): readonly string[] {
  const segments = files.filter(({ name }) => !isPacked(name));
  const small = files
    .filter(({ name, entries }) => isPacked(name) && entries < mostInRun / 2)
    .toSorted((a, b) => a.entries - b.entries);
  let total = segments.reduce((sum, { entries }) => sum + entries, 0);
  if (small.length > mostSmall) return upToARun(small);
  if (segments.length <= mostSegments && total < mostYoung) return [];
  const chosen = [...segments];
  for (const file of small) {
    if (file.entries > total) break;
    chosen.push(file);
    total += file.entries;
  }
  return chosen.map(({ name }) => name);
}

/** The smallest files, as many as fill a run. */
function upToARun(small: readonly FileStock[]): readonly string[] {
  let total = 0;
  return small.flatMap(({ name, entries }) => {
    total += entries;
    return total <= mostInRun ? [name] : [];
  });
}
