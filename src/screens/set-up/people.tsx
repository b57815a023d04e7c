import { personId, readId } from '../../domain/log/ids.ts';
import type { Entry } from '../../domain/shop/registers.ts';
import { peopleWords } from '../../words/people-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { FactPage } from './fact-page.tsx';
import { minutesAWeek } from './person-draft.ts';
import { keptPeople, PersonSheet } from './person-sheet.tsx';
import { WhoTapsPanel } from './who-taps.tsx';

/** Who works in the shop and when, and who of them taps on this tablet. */
export const People = () => (
  <>
    <FactPage
      register="person"
      kind="person"
      lead={words.peopleLead}
      addLabel={words.addPerson}
      kept={keptPeople}
      toId={(fresh) => readId(personId, fresh)}
      sheet={PersonSheet}
      detail={hoursOf}
    />
    <WhoTapsPanel />
  </>
);

function hoursOf({ fact }: Entry<'person'>): string | undefined {
  const minutes = minutesAWeek(fact);
  return minutes === undefined ? undefined : peopleWords.hoursAWeek(minutes);
}
