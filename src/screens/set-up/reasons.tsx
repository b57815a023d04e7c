import { useState } from 'preact/hooks';
import { type ReasonId, readId, reasonId } from '../../domain/log/ids.ts';
import { type Entry, factsOf } from '../../domain/shop/registers.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { FactList } from './fact-list.tsx';
import { NamedSheet } from './named-sheet.tsx';

/** The maker's reasons for a flaw. */
export const Reasons = () => {
  const session = useSession();
  const [open, setOpen] = useState<ReasonId | null>(null);
  const entries = factsOf(useShop().registers, 'reason');
  const picked: Entry<'reason'> | undefined = entries.find(({ id }) => id === open);
  return (
    <>
      <FactList
        title={words.reasons}
        lead={words.reasonsLead}
        entries={entries}
        addLabel={words.addReason}
        onAdd={() => setOpen(readId(reasonId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="reason"
      />
      {open && (
        <NamedSheet
          title={picked ? words.reasons : words.addReason}
          kind="reason"
          now={picked?.fact ?? { name: '', retired: false }}
          isNew={!picked}
          toSet={(value) => ({ register: 'reason', id: open, value })}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
