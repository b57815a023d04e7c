import { type ReadonlySignal, signal } from '@preact/signals';

/** A folder handle as browsers that let a page choose one have it; these two calls are not in TypeScript's library. */
export interface ChosenFolder extends FileSystemDirectoryHandle {
  readonly queryPermission?: (what: { mode: 'readwrite' }) => Promise<PermissionState>;
  readonly requestPermission?: (what: { mode: 'readwrite' }) => Promise<PermissionState>;
}

type FolderState =
  /** This browser lets no page choose a folder. */
  | { readonly kind: 'no-way' }
  | { readonly kind: 'none' }
  /** Chosen, and may be written to. */
  | { readonly kind: 'open'; readonly name: string }
  /** Chosen, but the browser wants the person to allow it again. */
  | { readonly kind: 'asks'; readonly name: string };

export interface CopyFolder {
  readonly state: ReadonlySignal<FolderState>;
  /** Asks for a folder, from within a tap. False when the person thought better of it. */
  readonly choose: () => Promise<boolean>;
  /** Asks for the leave to write again, from within a tap. */
  readonly ask: () => Promise<boolean>;
  readonly forget: () => Promise<void>;
  /** The bytes of a file of the folder; undefined when there is none of that name. */
  readonly read: (name: string) => Promise<Uint8Array | undefined>;
  /** Writes a file whole; the browser puts it in the place of an older one only when it is complete. */
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
}

export interface FolderParts {
  readonly pick: (() => Promise<ChosenFolder>) | undefined;
  /** Where the handle is kept between two starts. */
  readonly kept: {
    readonly load: () => Promise<ChosenFolder | undefined>;
    readonly keep: (folder: ChosenFolder) => Promise<void>;
    readonly forget: () => Promise<void>;
  };
}

const leave = { mode: 'readwrite' } as const;

/** The maker's own folder for copies, as it was chosen last. */
export async function openCopyFolder({ pick, kept }: FolderParts): Promise<CopyFolder> {
  const state = signal<FolderState>({ kind: pick ? 'none' : 'no-way' });
  let folder = pick ? await kept.load().catch(() => undefined) : undefined;
  if (folder) await settle(folder, await folder.queryPermission?.(leave));

  async function settle(chosen: ChosenFolder, permission: PermissionState = 'granted'): Promise<boolean> {
    folder = chosen;
    const isOpen = permission === 'granted';
    state.value = { kind: isOpen ? 'open' : 'asks', name: chosen.name };
    return isOpen;
  }

  function inUse(): ChosenFolder {
    if (!folder) throw new Error('no folder was chosen');
    return folder;
  }

  return {
    state,
    async choose() {
      const chosen = await pick?.().catch(calledOff);
      if (!chosen) return false;
      const isOpen = await settle(chosen, await chosen.requestPermission?.(leave));
      // A folder that cannot be remembered serves for as long as the window is open.
      await kept.keep(chosen).catch(() => undefined);
      return isOpen;
    },
    ask: async () => settle(inUse(), await inUse().requestPermission?.(leave)),
    async forget() {
      await kept.forget();
      folder = undefined;
      state.value = { kind: 'none' };
    },
    async read(name) {
      const handle = await inUse().getFileHandle(name).catch(ifNotFound);
      return handle && new Uint8Array(await (await handle.getFile()).arrayBuffer());
    },
    async write(name, bytes) {
      const writable = await (await inUse().getFileHandle(name, { create: true })).createWritable();
      await writable.write(bytes as Uint8Array<ArrayBuffer>);
      await writable.close();
    },
  };
}

function calledOff(error: unknown): undefined {
  if (error instanceof DOMException && error.name === 'AbortError') return undefined;
  throw error;
}

function ifNotFound(error: unknown): undefined {
  if (error instanceof DOMException && error.name === 'NotFoundError') return undefined;
  throw error;
}
