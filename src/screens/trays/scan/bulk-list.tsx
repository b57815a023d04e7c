import type { BulkMove } from '../../../domain/command/bulk-move.ts';
import { EmptyState } from '../../../ui/notice/empty-state.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { problemWords } from '../../../words/problem-words.ts';
import { scanWords as words } from '../../../words/scan-words.ts';
import { stageWords } from '../../../words/stage-words.ts';
import { useShop } from '../../parts/app-context.ts';
import { useNow } from '../../parts/use-now.ts';
import { earlyWords, wouldNotWords, wouldWords } from './scan-view.ts';
import type { Bulk, ListedTray } from './use-bulk.ts';

export interface BulkListProps {
  readonly move: BulkMove;
  readonly bulk: Bulk;
  readonly onDone: (all: boolean) => void;
}

/** The trays that were scanned, each with what would happen to it or why nothing, and the button that does it all. */
export const BulkList = ({ move, bulk, onDone }: BulkListProps) => {
  const { listed, ready, busy } = bulk;
  return (
    <Panel title={words.list} testId="bulk-list">
      {listed.length === 0 ? (
        <EmptyState title={words.listEmpty}>{words.listEmptyHelp}</EmptyState>
      ) : (
        <ol class="scan-list">
          {listed.map((each) => (
            <Line key={each.tray} of={each} move={move} bulk={bulk} />
          ))}
        </ol>
      )}
      <div class="scan-acts">
        <PressButton
          size="bench-small"
          tone="go"
          icon="pass"
          label={words.doAll(ready)}
          detail={words.moves[move]}
          disabledReason={busy || ready > 0 ? undefined : words.nothingToDo}
          closing
          onAct={() => !busy && void bulk.doAll().then(onDone)}
          testId="bulk-do"
        />
        {listed.length > 0 && (
          <PressButton
            size="bench-small"
            tone="quiet"
            label={words.newList}
            onAct={() => bulk.renew('nothing')}
            testId="bulk-new"
          />
        )}
      </div>
    </Panel>
  );
};

const Line = ({ of, move, bulk }: { of: ListedTray; move: BulkMove; bulk: Bulk }) => {
  const shop = useShop();
  const now = useNow();
  const { registers } = shop;
  const { tray, line, done, early } = of;
  const code = shop.trays.get(tray)?.code ?? '';
  const says =
    line.kind === 'would' ? wouldWords(line, registers) : [wouldNotWords(line, { move, registers, now })];
  const isDone = done?.problem === null;
  const earlySays = isDone ? undefined : earlyWords(line, { asked: early, now });
  const isRefused = done ? !isDone : line.kind === 'would-not';
  return (
    <li
      data-tone={isDone ? 'saved' : isRefused ? 'flaw' : undefined}
      data-testid={`bulk-line-${code}`}
      class="scan-line"
    >
      <span class="code trays-code">{code}</span>
      <div class="scan-line-words">
        {isDone && <strong>{words.done}</strong>}
        {says.map((each) => (
          <p key={each}>{each}</p>
        ))}
        {earlySays && <p data-testid={`bulk-early-says-${code}`}>{earlySays}</p>}
        {done?.problem && (
          <p class="trays-refusal" role="alert">
            {problemWords(done.problem, registers)}
          </p>
        )}
      </div>
      {earlySays && (
        <PressButton
          icon={early ? 'hold' : undefined}
          tone={early ? 'go' : 'flaw'}
          label={early ? stageWords.keepCuring : stageWords.takeOutEarly}
          name={early ? words.letCureOf(code) : words.takeEarlyOf(code)}
          onAct={() => bulk.takeEarly(tray, !early)}
          testId={`bulk-early-${code}`}
        />
      )}
      {done && done.events.length > 0 ? (
        <PressButton
          icon="undo"
          label={words.undo}
          name={words.undoOf(code)}
          onAct={() => void bulk.undo(tray)}
          testId={`bulk-undo-${code}`}
        />
      ) : (
        <PressButton
          icon="cross"
          tone="quiet"
          label={words.leaveOut}
          name={words.leaveOutOf(code)}
          onAct={() => bulk.leaveOut(tray)}
          testId={`bulk-leave-${code}`}
        />
      )}
    </li>
  );
};
