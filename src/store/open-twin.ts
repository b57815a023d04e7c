import type { FileShelf } from './file-shelf.ts';
import { type FilesWorkerParts, filesWorker, NoFilesKept } from './files-worker.ts';
import { noTwin } from './no-twin.ts';
import { opfsShelf, opfsTwin } from './opfs-twin.ts';
import { tailTwin } from './tail-twin.ts';
import { tailedTwin } from './tailed-twin.ts';
import type { Twin } from './twin.ts';

export interface OpenTwinParts extends Omit<FilesWorkerParts, 'start'> {
  /** Starts the worker that keeps files; undefined where the browser has none. */
  readonly start: FilesWorkerParts['start'] | undefined;
  readonly storage: Pick<Storage, 'getItem' | 'setItem'> | undefined;
}

export interface OpenedTwin {
  readonly twin: Twin;
  /** The shelf for copies; null where the browser keeps no files. */
  readonly shelf: FileShelf | null;
}

/**
 * The best second copy that this browser can keep: files with a tail beside them, else a tail in its small storage, else
 * none. Where files can be kept but not be read today, the tail stands in until the next start. Never rejects.
 */
export async function openTwin({ start, storage, ...parts }: OpenTwinParts): Promise<OpenedTwin> {
  const tail = () => (storage ? tailTwin(storage, parts.store) : noTwin());
  if (!start) return { twin: tail(), shelf: null };
  const files = filesWorker({ ...parts, start });
  const twin = opfsTwin(files);
  for (let tries = 1; ; tries += 1) {
    try {
      await twin.look();
      return { twin: storage ? tailedTwin({ journal: twin, tail: tail() }) : twin, shelf: opfsShelf(files) };
    } catch (error) {
      if (error instanceof NoFilesKept) return { twin: tail(), shelf: null };
      if (tries === mostTries) return { twin: tail(), shelf: opfsShelf(files) };
    }
  }
}

const mostTries = 2;
