import { useState } from 'preact/hooks';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { problemWords } from '../../words/problem-words.ts';
import { storesWords as words } from '../../words/stores-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { PartRow } from './stores-view.ts';
import type { OpenPartSheet } from './use-part-sheet.tsx';

export interface ToCleanProps {
  readonly rows: readonly PartRow[];
  readonly onOpen: OpenPartSheet;
}

/** What scrap has saved, and the tap that brings it back to the shelf. Nothing where nothing is to be cleaned. */
export const ToCleanPanel = ({ rows, onOpen }: ToCleanProps) => {
  const saved = rows.filter(({ toClean }) => toClean !== 0);
  if (saved.length === 0) return null;
  return (
    <Panel title={words.toCleanTitle} lead={words.toCleanLead} testId="stores-to-clean">
      <ul class="stores-parts">
        {saved.map((row) => (
          <Saved key={row.id} row={row} onOpen={onOpen} />
        ))}
      </ul>
    </Panel>
  );
};

const Saved = ({ row: { id, fact, toClean }, onOpen }: { row: PartRow; onOpen: OpenPartSheet }) => {
  const session = useSession();
  const { registers } = useShop();
  const [refusal, setRefusal] = useState('');
  const clean = async (back: number) => {
    const result = await session.act({ kind: 'clean-parts', part: id, back, lost: 0, shown: toClean });
    setRefusal(result.kind === 'refused' ? problemWords(result.problem, registers) : '');
  };
  return (
    <li class="stores-part">
      <header>
        <b>{fact.name}</b>
      </header>
      <p class="stores-saved figures" data-testid={`clean-${id}-count`}>
        {words.count(toClean)}
      </p>
      {toClean < 0 ? (
        <div class="stores-acts">
          <PressButton
            icon="recount"
            tone="flaw"
            label={words.countIt}
            detail={words.belowZero}
            name={words.actOn(words.countIt, fact.name)}
            onAct={() => onOpen('count', id)}
            testId={`clean-${id}-recount`}
          />
        </div>
      ) : (
        <div class="stores-acts">
          <PressButton
            icon="pass"
            tone="go"
            label={words.cleanOne}
            detail={words.backToStores(1)}
            name={words.actOn(words.cleanOne, fact.name)}
            onAct={() => void clean(1)}
            testId={`clean-${id}-one`}
          />
          {toClean > 1 && (
            <PressButton
              label={words.cleanAll}
              detail={words.backToStores(toClean)}
              name={words.actOn(words.cleanAll, fact.name)}
              closing
              onAct={() => void clean(toClean)}
              testId={`clean-${id}-all`}
            />
          )}
          <PressButton
            tone="quiet"
            label={words.cleanSome}
            detail={words.cleanSomeDetail}
            name={words.actOn(words.cleanSome, fact.name)}
            onAct={() => onOpen('clean', id)}
            testId={`clean-${id}-some`}
          />
        </div>
      )}
      {refusal && <p role="alert">{refusal}</p>}
    </li>
  );
};
