import type { Session } from '../../app/session.ts';

/**
 * What is typed and not saved yet, by the id of the thing it will be. A sheet that is closed by a slip opens again as
 * it was left, and a draft never leaves the shop that it was typed in.
 */
export type KeptDrafts<Draft> = (session: Session) => Map<string, Draft>;

export function keptDrafts<Draft>(): KeptDrafts<Draft> {
  const bySession = new WeakMap<Session, Map<string, Draft>>();
  return (session) => {
    const known = bySession.get(session) ?? new Map<string, Draft>();
    bySession.set(session, known);
    return known;
  };
}
