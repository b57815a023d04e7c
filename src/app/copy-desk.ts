import type { PhotoHash } from '../domain/log/photo-facts.ts';
import { listCopies } from '../store/backup/copies.ts';
import type { CopyName } from '../store/backup/copy-names.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import { forgetFolder, keepFolder, loadFolder } from '../store/kept-folder.ts';
import { clockTime } from '../words/date-words.ts';
import type { Clock } from './clock.ts';
import { type ChosenFolder, type CopyFolder, openCopyFolder } from './copy-folder.ts';
import { copyName } from './copy-name.ts';
import { type CopyWork, copyWork, type LogToCopy } from './copy-work.ts';
import type { Forgets } from './forgetting.ts';
import { type CopyOrder, type Keeper, logAsItIs, openKeeper, orderCopy } from './keeper.ts';
import type { CopyMemory, OutsideWay } from './known-copies.ts';
import { logSize } from './log-size.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { writeToFolder } from './outside-copy.ts';
import { type Photos, photosOf } from './photos.ts';
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
  /** The photos beside the log; null where the tablet keeps none. */
  readonly photos: Photos | null;
  /** Makes a copy for the person to take away, sealed when a passphrase is given. */
  readonly makeCopy: (how: CopyToMake) => Promise<MadeCopy>;
  /** Remembers that a file of a copy has left the tablet: the first one has the log, any may have photos. */
  readonly handedOut: (
    made: Pick<MadeCopy, 'entries' | 'log'>,
    file: Pick<MadeFile, 'number' | 'photos'>,
    way: OutsideWay,
  ) => Promise<void>;
  /** Writes a copy to the chosen folder now. Rejects when that cannot be done. */
  readonly writeToFolder: () => Promise<void>;
  /** The copies on the tablet, the newest first; none where it has no shelf. */
  readonly shelfCopies: () => Promise<readonly ShelfCopy[]>;
  /** The names of the copies on the tablet, without a look into them. */
  readonly shelfNames: () => Promise<readonly CopyName[]>;
  readonly shelfFile: (name: string) => CopyFile;
  readonly close: () => void;
}

export interface CopyToMake {
  readonly photos: boolean;
  readonly passphrase?: string;
}

/** A copy in one file, or in several where its photos do not fit into one. */
export interface MadeCopy {
  readonly files: readonly [MadeFile, ...MadeFile[]];
  readonly entries: number;
  /** How many entries the log had when the copy was made. */
  readonly log: number;
  /** Whether photos were asked for. */
  readonly withPhotos: boolean;
  /** Photos that could not be read and are in none of the files. */
  readonly leftOut: number;
  /** Twelve words that open a sealed copy; null for a plain one. */
  readonly words: readonly string[] | null;
}

export interface MadeFile {
  readonly name: string;
  /** From 1. */
  readonly number: number;
  readonly content: Blob;
  readonly photos: readonly PhotoHash[];
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

  const photos = store === null ? null : photosOf(store);

  function logWentOut({ entries, log }: Pick<MadeCopy, 'entries' | 'log'>, way: OutsideWay): void {
    memory.note({ outside: { at: session.now(), day: session.today(), log, entries, way } });
  }

  async function writeOutside(order: CopyOrder): Promise<void> {
    if (folder.state.value.kind !== 'open') return;
    const log = logSize(session);
    logWentOut({ ...(await writeToFolder(folder, { work, order, time: timeOf(order) })), log }, 'folder');
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
    photos,
    async handedOut(made, { number, photos: its }, way) {
      // Before the log: whoever looks when the log has gone out finds these noted. A note that fails asks for one more copy.
      if (its.length > 0) await photos?.wentOut(its).catch(() => undefined);
      if (number === 1) logWentOut(made, way);
    },
    async makeCopy({ photos: withPhotos, passphrase }) {
      const log = logSize(session);
      const order = await orderCopy({ session, store, version });
      const { volumes, ...made } = await work.take({
        ...{ log: order.log, least: order.least, about: order.about, passphrase },
        photos: withPhotos ? store : null,
      });
      const [first, ...more] = volumes.map(({ content, photos: its }, index) => {
        const number = index + 1;
        const of = volumes.length;
        const sealed = passphrase !== undefined;
        const name = copyName({ ...order.about, day: order.day, time: timeOf(order), sealed, number, of });
        return { name, number, content, photos: its };
      });
      if (!first) throw new Error('a copy has no file');
      return { ...made, files: [first, ...more], log, withPhotos };
    },
    writeToFolder: async () => writeOutside(await orderCopy({ session, store, version })),
    shelfCopies: async () => (shelf ? countCopies(shelf, work) : []),
    shelfNames: async () => (shelf ? listCopies(shelf) : []),
    shelfFile: (file) => ({ name: file, size: 0, content: () => contentOf(shelf, file) }),
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

async function contentOf(shelf: FileShelf | null, name: string): Promise<Blob> {
  const bytes = await shelf?.read(name);
  if (!bytes) throw new Error('the copy is not there any more');
  return new Blob([Uint8Array.from(bytes)]);
}

/** The browser's way of choosing a folder, where it has one; TypeScript's library does not know it. */
function folderPicker(): (() => Promise<ChosenFolder>) | undefined {
  const { showDirectoryPicker } = globalThis as {
    showDirectoryPicker?: (how: object) => Promise<ChosenFolder>;
  };
  return showDirectoryPicker && (() => showDirectoryPicker({ id: 'tallywright', mode: 'readwrite' }));
}
