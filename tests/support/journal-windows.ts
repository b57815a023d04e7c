import { type Journal, openJournal } from '../../src/worker/journal/journal.ts';
import { type FakeDisk, type FakeFile, type Fault, fakeWindow } from './fake-folder.ts';

let windows = 0;

/** A window's journal on a disk in memory, whose call of number `at` may go wrong. */
export async function journalWindow(
  disk: FakeDisk,
  fault?: { at: number; how: Fault },
): Promise<Journal & ReturnType<typeof fakeWindow>> {
  const window = fakeWindow(disk, fault);
  windows += 1;
  const writer = `w${windows}`;
  const journal = openJournal({
    folder: await window.openFolder('tallywright'),
    writer,
    turn: async () => {},
    alive: () => {},
    chance: () => 0,
  });
  return { ...journal, ...window };
}

export function filesOf(disk: FakeDisk): Map<string, FakeFile> {
  const files = disk.get('tallywright');
  if (!files) throw new Error('no window has opened the folder');
  return files;
}

/** As many windows as there are texts of entries, one after the other, each of which adds one and is shut. */
export async function oneByOne(disk: FakeDisk, texts: readonly string[]): Promise<void> {
  for (const text of texts) {
    const window = await journalWindow(disk);
    await window.add([text]);
    window.die();
  }
}

/** The names of all files of the journal that begin so. */
export function named(disk: FakeDisk, start: string): readonly string[] {
  return [...filesOf(disk).keys()].filter((name) => name.startsWith(start));
}

type End = 'kept' | 'refused' | 'hangs';

/**
 * How a piece of work ended. Work that never ends is left after the turns that any other would need, counted from when
 * `hung` says that a call never will.
 */
export async function endOf(work: Promise<unknown>, hung: Promise<void> = Promise.resolve()): Promise<End> {
  const patience = hung.then(() => new Promise<'hangs'>((resolve) => setTimeout(() => resolve('hangs'), 15)));
  return Promise.race([
    work.then(
      () => 'kept' as const,
      () => 'refused' as const,
    ),
    patience,
  ]);
}
