import { useEffect } from 'preact/hooks';
import { holdDraft } from '../../app/held-drafts.ts';
import { useSession } from './app-context.ts';

/** While `typed`, no new version is let in: a reload would lose what stands in the form. */
export function useHeldDraft(typed: boolean): void {
  const session = useSession();
  useEffect(() => (typed ? holdDraft(session) : undefined), [session, typed]);
}
