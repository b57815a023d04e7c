import { readId, reasonId } from '../../domain/log/ids.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { type Named, NamedSheet } from './named-sheet.tsx';

const kept = keptDrafts<Named>();

/** The maker's reasons for a flaw. */
export const Reasons = () => (
  <FactPage
    register="reason"
    kind="reason"
    lead={words.reasonsLead}
    addLabel={words.addReason}
    kept={kept}
    toId={(fresh) => readId(reasonId, fresh)}
    sheet={ReasonSheet}
  />
);

const ReasonSheet = ({ id, now, onClose }: FactSheetProps<'reason'>) => (
  <NamedSheet
    id={id}
    title={now ? words.editReason : words.addReason}
    kind="reason"
    now={now}
    kept={kept}
    toSet={(value) => ({ register: 'reason', id, value })}
    onClose={onClose}
  />
);
