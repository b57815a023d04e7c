import './forecast.css';
import { useMemo, useState } from 'preact/hooks';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { whatIfWords as words } from '../../words/what-if-words.ts';
import { useSession } from '../parts/app-context.ts';
import { StudyStanding } from '../parts/study-standing.tsx';
import { CannotForecast, ForecastStanding } from './forecast-standing.tsx';
import { PlanFitsPanel } from './plan-fits-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { useForecast } from './use-forecast.ts';
import { usePlanToAsk } from './use-plan-to-ask.ts';
import { WhatIfFields } from './what-if-fields.tsx';
import { WhatIfResult } from './what-if-result.tsx';
import { changedQuestion, changesOf, emptyWhatIf, type WhatIfDraft } from './what-if-view.ts';

/** What would come of a change: a copy of the plan is worked off beside the plan, with the same luck. */
export const WhatIfPage = ({ rack }: PlanPageProps) => {
  const session = useSession();
  const { shop } = session.view.value;
  const [draft, setDraft] = useState<WhatIfDraft>(emptyWhatIf);
  const [asked, setAsked] = useState<WhatIfDraft>(emptyWhatIf);
  // The batch that is due last: those before it are planned with it.
  const batch = batchTargets(shop).at(-1);
  const { study, toAsk } = usePlanToAsk({
    ...{ batch: batch?.batch, goal: 'firsts', counting: 'starts', until: undefined },
  });
  const question = toAsk?.kind === 'ask' ? toAsk.question : null;
  const changed = useMemo(() => {
    if (!question) return null;
    const at = { today: session.today(), zone: session.zone(), now: question.plan.now };
    const changes = changesOf(asked, at);
    return changes.length === 0 ? null : changedQuestion(question, changes);
  }, [question, asked, session]);
  const before = useForecast(question);
  // One after the other: both at once would only share the cores.
  const isReady = question !== null && before.state.last?.question === question;
  const after = useForecast(isReady ? changed : null);
  const { isBusy: isFirst, ...first } = before;
  const { isBusy: isSecond, ...second } = after;
  const isBusy = study.state.kind === 'none' || study.state.kind === 'working' || isFirst || isSecond;
  const [now, then] = [before.state.last, after.state.last];
  return (
    <PlanFrame page="what-if" rack={rack} busy={isBusy}>
      <StudyStanding state={study.state} again={study.again} />
      {toAsk?.kind === 'cannot' && <CannotForecast why={toAsk.why} />}
      {question && toAsk?.kind === 'ask' && (
        <WhatIfFields
          question={question}
          about={toAsk.about}
          draft={draft}
          onChange={setDraft}
          onAsk={() => setAsked(draft)}
          onForget={() => {
            setDraft(emptyWhatIf);
            setAsked(emptyWhatIf);
          }}
        />
      )}
      {question && <ForecastStanding {...(isReady && changed ? second : first)} />}
      {question && now && now.forecast.kind !== 'forecast' && <CannotForecast why={now.forecast.kind} />}
      {question &&
        now?.forecast.kind === 'forecast' &&
        (changed && then?.question === changed ? (
          <WhatIfResult now={now} afterwards={then.forecast} draft={asked} />
        ) : (
          <Panel title={words.result} testId="what-if-result">
            <p>{changed ? words.reckoned : words.none}</p>
          </Panel>
        ))}
      {question && <PlanFitsPanel plan={question.plan} due={batch?.due ?? null} />}
    </PlanFrame>
  );
};
