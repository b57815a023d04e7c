import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords } from '../../words/set-up-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { hrefOf } from '../parts/address.ts';
import { PartFigures, StateSign } from './part-figures.tsx';
import type { PartRow } from './stores-view.ts';
import type { OpenPartSheet } from './use-part-sheet.tsx';

/** One part of the stores with its numbers; its name leads to its page. */
export const PartCard = ({ row, onOpen }: { row: PartRow; onOpen: OpenPartSheet }) => {
  const { id, fact, state } = row;
  return (
    <li class="stores-part" data-state={state}>
      <header>
        <a class="stores-name" href={hrefOf('stores', 'part', id)} data-testid={`stores-part-${id}`}>
          {fact.name}
        </a>
        <span>{fact.retired ? words.putAway : setUpWords.sorts[fact.sort]}</span>
      </header>
      <PartFigures row={row} />
      <StateSign row={row} />
      <div class="stores-acts">
        <PressButton
          label={words.receive}
          name={words.actOn(words.receive, fact.name)}
          onAct={() => onOpen('receive', id)}
          testId={`stores-${id}-receive`}
        />
        <PressButton
          tone={state === 'below-zero' ? 'flaw' : 'plain'}
          label={words.countIt}
          name={words.actOn(words.countIt, fact.name)}
          onAct={() => onOpen('count', id)}
          testId={`stores-${id}-count`}
        />
      </div>
    </li>
  );
};
