import type { Entry, Link } from '../../domain/log/chain.ts';
import { actLine, settledLine } from '../../domain/log/journal-line.ts';
import { packLong } from '../../domain/packed/pack-long.ts';
import { mostInRun } from '../../domain/packed/pack-run.ts';
import { unsettledOf } from './contents.ts';
import type { Folder, HeldFile } from './folder.ts';
import { soundLines } from './sound-lines.ts';
import { writeFile } from './written-file.ts';

export interface Compaction {
  /** The files that may be folded; those that a window holds stay as they are. */
  readonly files: readonly string[];
  /** Which of those that no window holds are folded. */
  readonly choose: (names: readonly string[]) => readonly string[];
  /** A free name for a new file. */
  readonly newName: (kind: 'journal' | 'packed') => string;
  readonly alive: () => void;
}

interface HeldSegment {
  readonly name: string;
  readonly size: number;
  readonly file: HeldFile;
}

/**
 * Folds files that no window holds into few: runs of all that follows on from each other, lines of the rest. The old
 * ones go only after the new ones were read back; those with a line that says nothing are laid aside under another name.
 * Whatever fails on the way, every line is in one place at least, and in two at worst.
 */
export async function compact(folder: Folder, { files, choose, ...how }: Compaction): Promise<void> {
  const holds = new Map<string, HeldFile>();
  try {
    for (const name of files) {
      const file = await folder.hold(name);
      if (file) holds.set(name, file);
    }
    const chosen = new Set(choose([...holds.keys()]));
    if (chosen.size === 0) return;
    // Listed only now: until it was held, its window may have added to a segment.
    const held = (await folder.list()).flatMap(({ name, size }): readonly HeldSegment[] => {
      const file = chosen.has(name) ? holds.get(name) : undefined;
      return file ? [{ name, size, file }] : [];
    });
    await fold(folder, { held, ...how });
  } finally {
    for (const file of holds.values()) file.release();
  }
}

type Fold = { readonly held: readonly HeldSegment[] } & Pick<Compaction, 'newName' | 'alive'>;

async function fold(folder: Folder, { held, newName, alive }: Fold): Promise<void> {
  const written: string[] = [];
  const takeBack = async () => {
    for (const name of written) await folder.remove(name).catch(() => undefined);
  };
  let damaged: ReadonlySet<string>;
  try {
    damaged = await rewrite(folder, { held, newName, alive, written });
  } catch (error) {
    await takeBack();
    throw error;
  }
  try {
    for (const { name, file } of held) {
      file.release();
      if (damaged.has(name)) await folder.rename(name, `aside-${name}`);
      else await folder.remove(name);
      alive();
    }
  } catch (error) {
    // A folder that lets nothing go would hold one copy more after each start.
    if (await allStand(folder, held)) await takeBack();
    throw error;
  }
}

/** Writes all that the held files say, and notes in `written` the files that it makes. Gives the names of those with damage. */
async function rewrite(
  folder: Folder,
  { held, newName, alive, written }: Fold & { readonly written: string[] },
): Promise<ReadonlySet<string>> {
  const damaged = new Set<string>();
  const seen = new Set<Link>();
  const acts = new Map<string, string>();
  const settled = new Set<string>();
  let waiting: Entry[] = [];

  async function write(notes: readonly string[] = []): Promise<void> {
    const parcel = packLong(waiting);
    waiting = [];
    alive();
    const name = newName(parcel.runs.length > 0 ? 'packed' : 'journal');
    await writeFile(folder, { name, parcel, notes, alive });
    written.push(name);
  }

  for (const { name, size } of held) {
    for await (const said of soundLines(folder, { name, size, alive })) {
      if (said.kind === 'unreadable') damaged.add(name);
      else if (said.kind === 'act') acts.set(said.act, said.json);
      else if (said.kind === 'settled') settled.add(said.act);
      else if (said.kind === 'entries') {
        for (const entry of said.entries) {
          if (!seen.has(entry.link)) waiting.push(entry);
          seen.add(entry.link);
        }
        if (waiting.length >= mostInRun) await write();
      }
    }
  }
  // A settled act stays settled, though another window may hold a line that keeps it.
  const notes = [...unsettledOf({ acts, settled }).map(actLine), ...[...settled].map(settledLine)];
  if (waiting.length > 0 || notes.length > 0) await write(notes);
  return damaged;
}

async function allStand(folder: Folder, held: readonly HeldSegment[]): Promise<boolean> {
  const names = new Set((await folder.list()).map(({ name }) => name));
  return held.every(({ name }) => names.has(name));
}
