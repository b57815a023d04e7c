import { batchId, readId } from '../../domain/log/ids.ts';
import type { Entry } from '../../domain/shop/registers.ts';
import { dayWords } from '../../words/date-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { inWork } from './batch-draft.ts';
import { BatchSheet, keptBatches } from './batch-sheet.tsx';
import { FactPage } from './fact-page.tsx';

/** Runs with what is wanted and when. */
export const Batches = () => {
  const shop = useShop();
  const detail = ({ id, fact }: Entry<'batch'>) => {
    const wanted = fact.wanted.reduce((sum, { good }) => sum + good, 0);
    return [
      ...(fact.due ? [`${words.due} ${dayWords(fact.due)}`] : []),
      ...(wanted > 0 ? [words.wantedCount(wanted)] : []),
      words.inWork(inWork(shop, id)),
    ].join(' · ');
  };
  return (
    <FactPage
      register="batch"
      kind="batch"
      lead={words.batchesLead}
      addLabel={words.addBatch}
      kept={keptBatches}
      toId={(fresh) => readId(batchId, fresh)}
      sheet={BatchSheet}
      detail={detail}
    />
  );
};
