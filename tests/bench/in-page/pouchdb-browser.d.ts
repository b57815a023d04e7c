declare module 'pouchdb-browser' {
  /** As much of it as the bench uses. */
  export default class PouchDB {
    constructor(name: string, options?: { revs_limit?: number; auto_compaction?: boolean });
    put(document: Readonly<Record<string, unknown>> & { _id: string }): Promise<unknown>;
  }
}
