import { useState } from 'preact/hooks';
import { type BatchId, batchId, readId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { dayWords } from '../../words/time-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { BatchSheet } from './batch-sheet.tsx';
import { FactList } from './fact-list.tsx';

/** Runs with what is wanted and when. */
export const Batches = () => {
  const session = useSession();
  const [open, setOpen] = useState<BatchId | null>(null);
  const entries = factsOf(useShop().registers, 'batch');
  return (
    <>
      <FactList
        title={words.batches}
        lead={words.batchesLead}
        entries={entries}
        detail={({ fact }) => fact.due && `${words.due} ${dayWords(fact.due)}`}
        addLabel={words.addBatch}
        onAdd={() => setOpen(readId(batchId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="batch"
      />
      {open && (
        <BatchSheet
          key={open}
          id={open}
          now={entries.find(({ id }) => id === open)?.fact}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
