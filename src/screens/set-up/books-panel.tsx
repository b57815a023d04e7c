import { useState } from 'preact/hooks';
import { areInOrder, type BooksReport } from '../../app/books.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { booksWords as words } from '../../words/books-words.ts';
import { useApp, useSession } from '../parts/app-context.ts';

type Check =
  | { readonly kind: 'none' | 'running' | 'failed' }
  | { readonly kind: 'done'; readonly report: BooksReport };

/** So many gaps or breaks are named; the rest is counted. */
const mostNamed = 5;

/** Adds the log up anew at a tap and says what it found. */
export const BooksPanel = () => {
  const app = useApp();
  const session = useSession();
  const opening = app.opening.value;
  const twoCopies = opening.kind === 'open' ? opening.twoCopies : null;
  const [check, setCheck] = useState<Check>({ kind: 'none' });
  const run = async () => {
    setCheck({ kind: 'running' });
    try {
      await twoCopies?.compare();
      setCheck({ kind: 'done', report: await session.checkBooks() });
    } catch {
      setCheck({ kind: 'failed' });
    }
  };
  const twin = twoCopies?.state.value.twin;
  return (
    <Panel title={words.title} lead={words.lead} testId="books">
      <div>
        <PressButton
          label={words.check}
          disabledReason={check.kind === 'running' ? words.checking : undefined}
          onAct={() => void run()}
          testId="check-books"
        />
      </div>
      <div role="status" data-testid="books-found">
        {check.kind === 'failed' && <Notice tone="error" title={words.cannotRead} />}
        {check.kind === 'done' && (
          <>
            <Found report={check.report} onTake={() => void app.takeRebuilt(check.report.rebuilt)} />
            {twin && <p>{words.twin[twin]}</p>}
          </>
        )}
      </div>
    </Panel>
  );
};

const Found = ({ report, onTake }: { report: BooksReport; onTake: () => void }) => {
  const { entries, stations, damaged, newer, differing, gaps, breaks } = report;
  const faults = [
    ...(damaged > 0 ? [words.damaged(damaged)] : []),
    ...gaps.slice(0, mostNamed).map(({ station, from, to }) => words.gap(station, from, to)),
    ...breaks.slice(0, mostNamed).map(({ station, seq }) => words.broken(station, seq)),
  ];
  const unnamed = Math.max(0, gaps.length - mostNamed) + Math.max(0, breaks.length - mostNamed);
  return (
    <>
      {areInOrder(report) ? (
        <Notice tone="saved" title={words.inOrder(entries, stations)} testId="books-in-order" />
      ) : (
        <Notice tone="warn" title={words.checked(entries)} testId="books-faults">
          <ul class="set-up-list">
            {faults.map((fault) => (
              <li key={fault}>{fault}</li>
            ))}
            {unnamed > 0 && <li>{words.more(unnamed)}</li>}
          </ul>
        </Notice>
      )}
      {differing.length > 0 && (
        <Notice
          tone="error"
          title={words.differing}
          testId="books-differ"
          actions={<PressButton label={words.takeRebuilt} tone="go" closing onAct={onTake} />}
        />
      )}
      {newer > 0 && <p>{words.newer(newer)}</p>}
    </>
  );
};
