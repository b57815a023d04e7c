import { useState } from 'preact/hooks';
import { readId, type StageId, stageId } from '../../domain/log/ids.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import { type Entry, factsOf } from '../../domain/shop/registers.ts';
import { stageKindWords } from '../../words/outcome-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { FactList } from './fact-list.tsx';
import { StageSheet } from './stage-sheet.tsx';

/** The steps of the work, in the order of the routes. */
export const Stages = () => {
  const session = useSession();
  const { registers } = useShop();
  const [open, setOpen] = useState<StageId | null>(null);
  const order = liveStages(registers);
  const place = ({ id }: Entry<'stage'>) => (order.includes(id) ? order.indexOf(id) : order.length);
  const entries = factsOf(registers, 'stage').toSorted((a, b) => place(a) - place(b));
  return (
    <>
      <FactList
        title={words.stages}
        lead={words.stagesLead}
        entries={entries}
        detail={({ id, fact }) =>
          order.includes(id)
            ? stageKindWords[fact.kind]
            : `${stageKindWords[fact.kind]} · ${words.notOnRoute}`
        }
        addLabel={words.addStage}
        onAdd={() => setOpen(readId(stageId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="stage"
      />
      {open && (
        <StageSheet
          key={open}
          id={open}
          now={entries.find(({ id }) => id === open)?.fact}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
