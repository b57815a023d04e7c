/** A folder of files, as the journal needs it. Every promise rejects when the platform cannot do what was asked. */
export interface Folder {
  readonly names: () => Promise<readonly string[]>;
  /** Bytes `from` to `to` of a file (to its end when left out), also of one that another window holds open. */
  readonly read: (name: string, from: number, to?: number) => Promise<Uint8Array>;
  /** Opens a file for writing, made when it is missing. Rejects when another window holds it. */
  readonly open: (name: string) => Promise<OpenFile>;
  readonly remove: (name: string) => Promise<void>;
  readonly rename: (name: string, to: string) => Promise<void>;
}

/** A file that is held open; nobody else writes to it meanwhile. Every call may throw. */
export interface OpenFile {
  readonly size: () => number;
  /** Writes at a position; returns how many bytes went in. */
  readonly write: (bytes: Uint8Array, at: number) => number;
  readonly truncate: (size: number) => void;
  /** Asks for all that was written to be on the disk. */
  readonly flush: () => void;
  readonly close: () => void;
}
