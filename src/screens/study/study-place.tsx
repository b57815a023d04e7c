import './study.css';
import type { ComponentType } from 'preact';
import { useCallback, useEffect, useMemo, useState } from 'preact/hooks';
import { answeredIn } from '../../domain/study/marks.ts';
import type { StudyQuestions } from '../../domain/study/study.ts';
import { routesIn } from '../../domain/study/study-routes.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { stillDrawing } from '../../ui/turn/turns.ts';
import { studyWords as words } from '../../words/study-words.ts';
import { address, goTo } from '../parts/address.ts';
import { useSession } from '../parts/app-context.ts';
import { type StudyPage, studyPageOf } from '../parts/study-pages.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { ChancesPage } from './chances-page.tsx';
import { ComparePage } from './compare-page.tsx';
import { FlawsPage } from './flaws-page.tsx';
import { FlowPage } from './flow-page.tsx';
import { SignalsPage } from './signals-page.tsx';
import { StudyFilter } from './study-filter.tsx';
import type { Asked, PageProps } from './study-page-props.ts';
import { everything, filterOf } from './study-question.ts';
import { TimePage } from './time-page.tsx';

const pages: Readonly<Record<StudyPage, { Page: ComponentType<PageProps>; filtered: boolean }>> = {
  chances: { Page: ChancesPage, filtered: true },
  flow: { Page: FlowPage, filtered: true },
  flaws: { Page: FlawsPage, filtered: true },
  signals: { Page: SignalsPage, filtered: false },
  time: { Page: TimePage, filtered: true },
  compare: { Page: ComparePage, filtered: false },
};

/** What the whole log tells, a page for each thing that is asked of it. */
export const StudyPlace = () => {
  const page = studyPageOf(address.value.rest[0]);
  // An address that names no page is that of the place.
  useEffect(() => {
    if (!page) goTo('yield');
  }, [page]);
  return page ? <Study page={page} /> : null;
};

const Study = ({ page }: { page: StudyPage }) => {
  const session = useSession();
  const view = session.view.value;
  const today = session.today();
  const [chosen, setChosen] = useState(everything);
  const [asked, setAsked] = useState<Asked>({ comparison: null, charted: null });
  const ask = useCallback((part: Partial<Asked>) => setAsked((before) => ({ ...before, ...part })), []);
  // Other ones whenever the view is: the shop behind it changes in place.
  const questions = useMemo(
    (): StudyQuestions => ({
      ...asked,
      routes: routesIn(view.shop.registers),
      filter: filterOf(chosen, today),
      answered: answeredIn(view.shop.registers),
    }),
    [asked, chosen, today, view],
  );
  const { state, again } = useStudy('study', questions);
  const { Page, filtered } = pages[page];
  const studied = latestOf(state);
  return (
    <main class="study" aria-busy={state.kind === 'none' || state.kind === 'working' || stillDrawing.value}>
      <header class="study-head">
        <div>
          <h1>{words.pages[page].title}</h1>
          <p>{words.pages[page].lead}</p>
        </div>
        <PressButton icon="back" label={words.back} onAct={() => goTo('yield')} testId="study-back" />
      </header>
      {filtered && <StudyFilter chosen={chosen} onChoose={setChosen} />}
      <StudyStanding state={state} again={again} />
      {studied && (
        <div class="study-page" data-testid={`study-${page}`} data-old={state.kind !== 'ready' || undefined}>
          {studied.study.reach.judged === 0 ? (
            <EmptyState icon="yield" title={words.nothing}>
              {words.nothingHelp}
            </EmptyState>
          ) : (
            <Page {...studied} asked={asked} ask={ask} />
          )}
          {studied.study.reach.doubtful > 0 && (
            <p class="study-note">{words.doubtful(studied.study.reach.doubtful)}</p>
          )}
        </div>
      )}
    </main>
  );
};
