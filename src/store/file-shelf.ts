/** A few whole files on the tablet, beside the database and not in it. Every promise rejects when it cannot be done. */
export interface FileShelf {
  readonly names: () => Promise<readonly string[]>;
  /** The bytes of a file; undefined when there is none of that name. */
  readonly read: (name: string) => Promise<Uint8Array | undefined>;
  /** Writes a file whole and flushes it; one of the same name is replaced only once the new one is on disk. */
  readonly write: (name: string, bytes: Uint8Array) => Promise<void>;
  /** Takes a file off the shelf; one that is not there is no fault. */
  readonly remove: (name: string) => Promise<void>;
}

/** Letters, digits, blanks, dots, dashes and low lines, 120 at most. A name that ends in `.part` is the shelf's own. */
export function isShelfName(name: string): boolean {
  return /^[A-Za-z0-9][A-Za-z0-9 ._-]{0,119}$/.test(name) && !name.endsWith('.part');
}
