export interface FileInfo {
  readonly name: string;
  /** In bytes. */
  readonly size: number;
}

/** A file that no other window can write while it is held. */
export interface HeldFile {
  /** Adds bytes at the end and flushes them. When it rejects, any part of them may be in the file. */
  readonly append: (bytes: Uint8Array<ArrayBuffer>) => Promise<void>;
  readonly release: () => void;
}

/** One folder of plain files, as the journal and the shelf need it. Every promise rejects when it cannot be done. */
export interface Folder {
  readonly list: () => Promise<readonly FileInfo[]>;
  /** The bytes of a file in a range, fewer where it ends; also of a file that another window holds. */
  readonly read: (name: string, range: { from: number; to: number }) => Promise<Uint8Array<ArrayBuffer>>;
  /** A new file, held; rejects when there is one of the name. */
  readonly create: (name: string) => Promise<HeldFile>;
  /** Takes hold of a file; undefined, and at once, when another window has it. */
  readonly hold: (name: string) => Promise<HeldFile | undefined>;
  /** Gives a file another name, in place of the file that had it. When it rejects, that one may be torn. */
  readonly rename: (name: string, to: string) => Promise<void>;
  readonly remove: (name: string) => Promise<void>;
}
