import { holdsDrafts } from './held-drafts.ts';
import type { Session } from './session.ts';
import type { Busy } from './update-offer.ts';

/** What a reload of this window would lose or interrupt. */
export function busyHere(session: Session): Busy | undefined {
  const saving = session.saving.value.kind;
  if (saving === 'taken' || saving === 'not-saved') return 'not-saved';
  if (session.spell.value?.begun) return 'tapping';
  return holdsDrafts(session) || document.querySelector('dialog[open]') ? 'typing' : undefined;
}
