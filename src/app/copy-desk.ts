import { listCopies } from '../store/backup/copies.ts';
import type { CopyName } from '../store/backup/copy-names.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import { forgetFolder, keepFolder, loadFolder } from '../store/kept-folder.ts';
import { clockTime } from '../words/time-words.ts';
import type { Clock } from './clock.ts';
import { type ChosenFolder, type CopyFolder, openCopyFolder } from './copy-folder.ts';
import { type CopyWork, copyWork, type LogToCopy } from './copy-work.ts';
import type { Forgets } from './forgetting.ts';
import { type CopyOrder, type Keeper, logAsItIs, openKeeper, orderCopy } from './keeper.ts';
import type { CopyMemory, OutsideWay } from './known-copies.ts';
import { logSize } from './log-size.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { type OutsideFile, outsideFile, writeToFolder } from './outside-copy.ts';
import type { CopyFile } from './restore.ts';
import type { Timer } from './saver.ts';
import type { Session } from './session.ts';

/** A copy on the tablet's shelf. */
export interface ShelfCopy extends CopyName {
  /** Entries that can be read in it; null when none can. */
  readonly entries: number | null;
}

/** All that is done with the copies of one open shop. */
export interface CopyDesk extends Pick<Keeper, 'keep' | 'working'> {
  readonly work: CopyWork;
  /** The shop's log, against which a copy is held before it comes in. Rejects when it cannot be read. */
  readonly log: () => Promise<LogToCopy>;
  /** Whether the tablet has a place for copies. */
  readonly hasShelf: boolean;
  readonly folder: CopyFolder;
  /** Makes a file for the person to take away, sealed when a passphrase is given. */
  readonly makeFile: (passphrase?: string) => Promise<MadeFile>;
  /** Remembers that a copy has left the tablet. */
  readonly handedOut: (made: Pick<MadeFile, 'entries' | 'log'>, way: OutsideWay) => void;
  /** Writes a copy to the chosen folder now. Rejects when that cannot be done. */
  readonly writeToFolder: () => Promise<void>;
  /** The copies on the tablet, the newest first; none where it has no shelf. */
  readonly shelfCopies: () => Promise<readonly ShelfCopy[]>;
  /** The names of the copies on the tablet, without a look into them. */
  readonly shelfNames: () => Promise<readonly CopyName[]>;
  readonly shelfFile: (name: string) => CopyFile;
  readonly close: () => void;
}

export interface MadeFile extends OutsideFile {
  /** How many entries the log had when the file was made. */
  readonly log: number;
  /** Twelve words that open a sealed file; null for a plain one. */
  readonly words: readonly string[] | null;
}

export interface DeskParts {
  readonly session: Session;
  /** The name of the shop's store. */
  readonly name: string;
  readonly forgets: Forgets;
  readonly memory: CopyMemory;
  readonly shelf: FileShelf | null;
  readonly clock: Clock;
  readonly timer: Timer;
  readonly version: string;
}

export async function openCopyDesk(parts: DeskParts): Promise<CopyDesk> {
  const { session, name, memory, shelf, clock, timer, version } = parts;
  const work = copyWork(shelf);
  // A log that is held in memory is in no database that a worker could read.
  const store = parts.forgets === 'all' ? null : name;
  const folder = await openCopyFolder({
    pick: folderPicker(),
    kept: {
      load: () => loadFolder(name),
      keep: (chosen) => keepFolder(name, chosen),
      forget: () => forgetFolder(name),
    },
  });
  const timeOf = ({ about }: CopyOrder) => clockTime(about.wall, { zone: about.zone, now: about.wall });

  function handedOut({ entries, log }: Pick<MadeFile, 'entries' | 'log'>, way: OutsideWay): void {
    memory.note({ outside: { at: session.now(), day: session.today(), log, entries, way } });
  }

  async function writeOutside(order: CopyOrder): Promise<void> {
    if (folder.state.value.kind !== 'open') return;
    const log = logSize(session);
    handedOut({ ...(await writeToFolder(folder, { work, order, time: timeOf(order) })), log }, 'folder');
  }

  const keeper = openKeeper({
    session,
    store,
    memory,
    keepCopy: shelf && ((order) => keepOn(work, order)),
    writeOutside,
    runAlone: oneAtATime(`copies of ${name}`, globalThis.navigator?.locks, clock.monotonic),
    timer,
    version,
  });

  return {
    keep: keeper.keep,
    working: keeper.working,
    work,
    log: () => logAsItIs({ session, store }),
    hasShelf: shelf !== null,
    folder,
    handedOut,
    async makeFile(passphrase) {
      const log = logSize(session);
      const order = await orderCopy({ session, store, version });
      const file = await outsideFile(work, { order, time: timeOf(order) });
      if (passphrase === undefined) return { ...file, log, words: null };
      const { bytes, words } = await work.seal({ bytes: file.bytes, passphrase });
      return { ...file, name: file.name.replace(/[.]jsonl[.]gz$/, '.sealed'), bytes, log, words };
    },
    writeToFolder: async () => writeOutside(await orderCopy({ session, store, version })),
    shelfCopies: async () => (shelf ? countCopies(shelf, work) : []),
    shelfNames: async () => (shelf ? listCopies(shelf) : []),
    shelfFile: (file) => ({ name: file, size: 0, bytes: () => bytesOf(shelf, file) }),
    close: keeper.stop,
  };
}

async function keepOn(work: CopyWork, order: CopyOrder) {
  const result = await work.keep(order);
  return result.kind === 'kept' ? { kind: result.kind, entries: result.entries } : { kind: result.kind };
}

async function countCopies(shelf: FileShelf, work: CopyWork): Promise<readonly ShelfCopy[]> {
  const counted: ShelfCopy[] = [];
  for (const copy of await listCopies(shelf)) {
    const bytes = await shelf.read(copy.name);
    const found = bytes && (await work.look({ bytes }));
    counted.push({ ...copy, entries: found?.kind === 'read' ? found.entries : null });
  }
  return counted;
}

async function bytesOf(shelf: FileShelf | null, name: string): Promise<Uint8Array> {
  const bytes = await shelf?.read(name);
  if (!bytes) throw new Error('the copy is not there any more');
  return bytes;
}

/** The browser's way of choosing a folder, where it has one; TypeScript's library does not know it. */
function folderPicker(): (() => Promise<ChosenFolder>) | undefined {
  const { showDirectoryPicker } = globalThis as {
    showDirectoryPicker?: (how: object) => Promise<ChosenFolder>;
  };
  return showDirectoryPicker && (() => showDirectoryPicker({ id: 'tallywright', mode: 'readwrite' }));
}
