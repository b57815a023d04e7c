/** A few whole files on the tablet, beside the database and not in it. Every promise rejects when it cannot be done. */
export interface FileShelf {
  readonly names: () => Promise<readonly string[]>;
  /** The bytes of a file; undefined when there is none of that name. */
  readonly read: (name: string) => Promise<Uint8Array | undefined>;
  /** Writes a file whole and flushes it; one of the same name is replaced only once the new one is on disk. */
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
  readonly remove: (name: string) => Promise<void>;
}
