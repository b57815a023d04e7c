import { useState } from 'preact/hooks';
import { type PersonId, personId, readId } from '../../domain/log/ids.ts';
import { type Entry, factsOf } from '../../domain/shop/registers.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { FactList } from './fact-list.tsx';
import { NamedSheet } from './named-sheet.tsx';

/** Who works in the shop; initials are enough. */
export const People = () => {
  const session = useSession();
  const [open, setOpen] = useState<PersonId | null>(null);
  const entries = factsOf(useShop().registers, 'person');
  const picked: Entry<'person'> | undefined = entries.find(({ id }) => id === open);
  return (
    <>
      <FactList
        title={words.people}
        lead={words.peopleLead}
        entries={entries}
        addLabel={words.addPerson}
        onAdd={() => setOpen(readId(personId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="person"
      />
      {open && (
        <NamedSheet
          title={picked ? words.people : words.addPerson}
          kind="person"
          now={picked?.fact ?? { name: '', retired: false }}
          isNew={!picked}
          toSet={(value) => ({ register: 'person', id: open, value })}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
