import './forecast.css';
import { useMemo, useState } from 'preact/hooks';
import type { ShopDay } from '../../domain/log/ids.ts';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { useSession } from '../parts/app-context.ts';
import { StudyStanding } from '../parts/study-standing.tsx';
import { DatesPanel } from './dates-panel.tsx';
import { FanPanel } from './fan-panel.tsx';
import { ForecastBehind } from './forecast-behind.tsx';
import { ForecastNotices } from './forecast-notices.tsx';
import { CannotForecast, ForecastStanding } from './forecast-standing.tsx';
import { type Counting, dayOf } from './forecast-view.ts';
import { KeepPlanPanel } from './keep-plan-panel.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import type { Goal } from './plan-question.ts';
import { PromisePanel } from './promise-panel.tsx';
import { useForecast } from './use-forecast.ts';
import { usePlanToAsk } from './use-plan-to-ask.ts';

/** When all is done, what there will be by a day, and what can be promised. */
export const ForecastPage = ({ rack }: PlanPageProps) => {
  const session = useSession();
  const { shop } = session.view.value;
  const [chosen, setChosen] = useState<string>();
  const [goal, setGoal] = useState<Goal>('firsts');
  const [counting, setCounting] = useState<Counting>('starts');
  const [until, setUntil] = useState<ShopDay>();
  const batches = batchTargets(shop);
  const at = Math.max(
    0,
    batches.findIndex((each) => each.batch === chosen),
  );
  const batch = batches[at];
  const { study, toAsk } = usePlanToAsk({ batch: batch?.batch, goal, counting, until });
  const question = toAsk?.kind === 'ask' ? toAsk.question : null;
  const { isBusy: isReckoning, ...forecast } = useForecast(question);
  const { state } = forecast;
  const last = state.last;
  const found = last?.forecast;
  const day = useMemo(() => {
    if (until) return until;
    if (batch?.due && batch.due >= session.today()) return batch.due;
    const end = found?.kind === 'forecast' ? (found.done.at85 ?? found.done.at50) : null;
    return end === null ? session.today() : dayOf(shop, end, session.zone());
  }, [until, batch?.due, found, shop, session]);
  if (!batch) return null;
  const isBusy = study.state.kind === 'none' || study.state.kind === 'working' || isReckoning;
  const about = toAsk?.kind === 'ask' ? toAsk.about : undefined;
  return (
    <PlanFrame page="forecast" rack={rack} busy={isBusy}>
      <div class="plan-fields forecast-fields">
        {batches.length > 1 && (
          <SelectField
            label={words.batch}
            hint={
              at > 0
                ? words.together(
                    batches
                      .slice(0, at)
                      .map(({ name }) => name)
                      .join(', '),
                  )
                : undefined
            }
            options={batches.map(({ batch: value, name: label }) => ({ value, label }))}
            value={batch.batch}
            onChoose={setChosen}
            testId="forecast-batch"
          />
        )}
        <ChoiceRow
          label={words.goal}
          choices={(['firsts', 'finished'] as const).map((value) => ({ value, label: words.goals[value] }))}
          value={goal}
          onChoose={setGoal}
          testId="forecast-goal"
        />
        <ChoiceRow
          label={words.counting}
          choices={(['starts', 'in-work'] as const).map((value) => ({
            value,
            label: words.countings[value],
          }))}
          value={counting}
          onChoose={setCounting}
          testId="forecast-counting"
        />
      </div>
      <StudyStanding state={study.state} again={study.again} />
      {toAsk?.kind === 'cannot' && <CannotForecast why={toAsk.why} />}
      {question && <ForecastStanding {...forecast} />}
      {about && <ForecastNotices batch={batch} about={about} />}
      {question && last && found && found.kind !== 'forecast' && <CannotForecast why={found.kind} />}
      {about && last && found?.kind === 'forecast' && (
        <div
          class="plan-page"
          data-old={last.question !== question || study.state.kind !== 'ready' || undefined}
        >
          <DatesPanel forecast={found} batch={batch} />
          <PromisePanel
            {...{ forecast: found, batch, day }}
            keys={about.keys}
            isWhole={at === 0}
            onDay={setUntil}
          />
          {study.toKeep && counting === 'starts' && (
            <KeepPlanPanel
              {...{ batch, forecast: found, plan: last.question.plan, keys: about.keys }}
              study={study.toKeep}
            />
          )}
          <FanPanel forecast={found} plan={last.question.plan} batch={batch} />
          <ForecastBehind
            plan={last.question.plan}
            history={study.history}
            about={about}
            times={found.replications}
          />
        </div>
      )}
    </PlanFrame>
  );
};
