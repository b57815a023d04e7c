import type { Session } from './session.ts';

const held = new WeakMap<Session, Set<object>>();

/**
 * Notes that something is typed in this shop and not saved: a reload would lose it, so no update is let in meanwhile.
 *
 * @returns what takes the note back
 */
export function holdDraft(session: Session): () => void {
  const draft = {};
  const drafts = held.get(session) ?? new Set();
  held.set(session, drafts.add(draft));
  return () => drafts.delete(draft);
}

export const holdsDrafts = (session: Session): boolean => (held.get(session)?.size ?? 0) > 0;
