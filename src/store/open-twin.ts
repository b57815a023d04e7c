import type { FileShelf } from './file-shelf.ts';
import { type FilesWorkerParts, filesWorker } from './files-worker.ts';
import { noTwin } from './no-twin.ts';
import { opfsShelf, opfsTwin } from './opfs-twin.ts';
import { tailTwin } from './tail-twin.ts';
import type { Twin } from './twin.ts';

export interface OpenTwinParts extends Omit<FilesWorkerParts, 'start'> {
  /** Starts the worker that keeps files; undefined where the browser has none. */
  readonly start: (() => Worker) | undefined;
  readonly storage: Pick<Storage, 'getItem' | 'setItem'> | undefined;
}

export interface OpenedTwin {
  readonly twin: Twin;
  /** The shelf for copies; null where the browser keeps no files. */
  readonly shelf: FileShelf | null;
}

/** The best second copy that this browser can keep: files, else a tail in its small storage, else none. Never rejects. */
export async function openTwin({ start, storage, ...parts }: OpenTwinParts): Promise<OpenedTwin> {
  if (start) {
    const worker = filesWorker({ ...parts, start });
    const twin = opfsTwin(worker);
    try {
      await twin.look();
      return { twin, shelf: opfsShelf(worker) };
    } catch {
      worker.end();
    }
  }
  return { twin: storage ? tailTwin(storage, parts.store) : noTwin(), shelf: null };
}
