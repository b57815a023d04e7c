import { isSameHolding } from '../../domain/log/holding.ts';
import { actLine, settledLine } from '../../domain/log/journal-line.ts';
import { type Contents, emptyContents, readOn, unsettledOf } from './contents.ts';
import type { FileInfo, Folder, HeldFile } from './folder.ts';
import { bytesOf } from './whole-lines.ts';

export interface Compaction {
  /** The names of the segments that may be folded into one. */
  readonly segments: readonly string[];
  /** A free name for the new segment. */
  readonly into: string;
  /** So many segments may stay as they are. */
  readonly atMost: number;
  readonly alive: () => void;
}

interface HeldSegment extends FileInfo {
  readonly file: HeldFile;
}

/**
 * Folds the segments that no window holds into one, when they are many. The old ones go only after the new one was
 * read back and found to say the same; those with a line that says nothing are laid aside under another name. Whatever
 * fails on the way, every line is in one place at least, and in two at worst.
 */
export async function compact(folder: Folder, { segments, atMost, ...how }: Compaction): Promise<void> {
  const holds = new Map<string, HeldFile>();
  try {
    for (const name of segments) {
      const file = await folder.hold(name);
      if (file) holds.set(name, file);
    }
    if (holds.size <= atMost) return;
    // Listed only now: until it was held, its window may have added to a segment.
    const held = (await folder.list()).flatMap((info): readonly HeldSegment[] => {
      const file = holds.get(info.name);
      return file ? [{ ...info, file }] : [];
    });
    await fold(folder, { held, ...how });
  } finally {
    for (const file of holds.values()) file.release();
  }
}

async function fold(
  folder: Folder,
  { held, into, alive }: { held: readonly HeldSegment[] } & Pick<Compaction, 'into' | 'alive'>,
): Promise<void> {
  const file = await folder.create(into);
  let gathered: Contents;
  try {
    gathered = await copyLines(folder, { held, to: file, alive });
    file.release();
    await mustSayTheSame(folder, { name: into, gathered, alive });
  } catch (error) {
    file.release();
    await folder.remove(into).catch(() => undefined);
    throw error;
  }
  try {
    for (const segment of held) {
      segment.file.release();
      const read = gathered.files.get(segment.name);
      const isWhole = segment.size === 0 || (read?.unreadable === 0 && read.upTo === segment.size);
      if (isWhole) await folder.remove(segment.name);
      else await folder.rename(segment.name, `aside-${segment.name}`);
      alive();
    }
  } catch (error) {
    // A folder that lets nothing go would hold one copy more after each start.
    if (await allStand(folder, held)) await folder.remove(into).catch(() => undefined);
    throw error;
  }
}

async function copyLines(
  folder: Folder,
  { held, to, alive }: { held: readonly HeldSegment[]; to: HeldFile; alive: () => void },
): Promise<Contents> {
  const gathered = emptyContents();
  let waiting: string[] = [];
  for (const { name, size } of held) {
    await readOn(gathered, folder, {
      name,
      to: size,
      alive,
      taken: ({ text }) => {
        if (text.startsWith('{"prev"')) waiting.push(text);
      },
    });
    if (waiting.length > 0) await to.append(bytesOf(waiting));
    waiting = [];
  }
  // A settled act stays settled, though another window may hold a line that keeps it.
  const notes = [...unsettledOf(gathered).map(actLine), ...[...gathered.settled].map(settledLine)];
  if (notes.length > 0) await to.append(bytesOf(notes));
  return gathered;
}

async function mustSayTheSame(
  folder: Folder,
  { name, gathered, alive }: { name: string; gathered: Contents; alive: () => void },
): Promise<void> {
  const copy = emptyContents();
  const size = (await folder.list()).find((file) => file.name === name)?.size ?? 0;
  await readOn(copy, folder, { name, to: size, alive });
  const same =
    isSameHolding(copy.holding, gathered.holding) &&
    copy.places.size === gathered.places.size &&
    String(unsettledOf(copy)) === String(unsettledOf(gathered)) &&
    String([...copy.settled]) === String([...gathered.settled]);
  if (!same) throw new Error('the folded segment does not say what the old ones say');
}

async function allStand(folder: Folder, held: readonly HeldSegment[]): Promise<boolean> {
  const names = new Set((await folder.list()).map(({ name }) => name));
  return held.every(({ name }) => names.has(name));
}
