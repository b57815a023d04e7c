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
  });
  return { ...journal, ...window };
}

export function filesOf(disk: FakeDisk): Map<string, FakeFile> {
  const files = disk.get('tallywright');
  if (!files) throw new Error('no window has opened the folder');
  return files;
}

/** How a piece of work ended; work that never ends is left after the turns that any other would need. */
export async function endOf(work: Promise<unknown>): Promise<'kept' | 'refused' | 'hangs'> {
  const patience = new Promise<'hangs'>((resolve) => setTimeout(() => resolve('hangs'), 15));
  return Promise.race([
    work.then(
      () => 'kept' as const,
      () => 'refused' as const,
    ),
    patience,
  ]);
}
