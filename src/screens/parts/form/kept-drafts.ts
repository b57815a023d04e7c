import { holdDraft } from '../../../app/held-drafts.ts';
import type { Session } from '../../../app/session.ts';

/** The ids of the things that a draft is kept for. */
export interface DraftIds {
  readonly ids: () => readonly string[];
  readonly has: (id: string) => boolean;
}

/** Drafts of one kind of thing, by the id of the thing that each will be. */
interface DraftShelf<Draft> extends DraftIds {
  readonly get: (id: string) => Draft | undefined;
  /** Keeps a draft, or forgets it; while one is kept no new version of the app is let in. */
  readonly keep: (id: string, draft: Draft | undefined) => void;
}

/**
 * What is typed and not saved yet. A sheet that is closed by a slip opens again as it was left, and a draft never
 * leaves the shop that it was typed in.
 */
export type KeptDrafts<Draft> = (session: Session) => DraftShelf<Draft>;

export function keptDrafts<Draft>(): KeptDrafts<Draft> {
  const bySession = new WeakMap<Session, DraftShelf<Draft>>();
  return (session) => {
    const known = bySession.get(session) ?? draftShelf(session);
    bySession.set(session, known);
    return known;
  };
}

function draftShelf<Draft>(session: Session): DraftShelf<Draft> {
  const drafts = new Map<string, { readonly draft: Draft; readonly release: () => void }>();
  return {
    ids: () => [...drafts.keys()],
    has: (id) => drafts.has(id),
    get: (id) => drafts.get(id)?.draft,
    keep(id, draft) {
      const before = drafts.get(id);
      if (draft !== undefined)
        return void drafts.set(id, { draft, release: before?.release ?? holdDraft(session) });
      before?.release();
      drafts.delete(id);
    },
  };
}
