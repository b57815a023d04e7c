import { personId, readId } from '../../domain/log/ids.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { type Named, NamedSheet } from './named-sheet.tsx';
import { WhoTapsPanel } from './who-taps.tsx';

const kept = keptDrafts<Named>();

/** Who works in the shop, and who of them taps on this tablet. */
export const People = () => (
  <>
    <FactPage
      register="person"
      kind="person"
      lead={words.peopleLead}
      addLabel={words.addPerson}
      kept={kept}
      toId={(fresh) => readId(personId, fresh)}
      sheet={PersonSheet}
    />
    <WhoTapsPanel />
  </>
);

const PersonSheet = ({ id, now, onClose }: FactSheetProps<'person'>) => (
  <NamedSheet
    id={id}
    title={now ? words.editPerson : words.addPerson}
    kind="person"
    now={now}
    kept={kept}
    toSet={(value) => ({ register: 'person', id, value })}
    onClose={onClose}
  />
);
