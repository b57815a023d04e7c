import { useMemo, useState } from 'preact/hooks';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { startsWords as words } from '../../words/starts-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession } from '../parts/app-context.ts';
import { latestOf, StudyStanding } from '../parts/study-standing.tsx';
import { useStudy } from '../parts/use-study.ts';
import { CostsFields, useCosts } from './costs-fields.tsx';
import { PlanFrame } from './plan-frame.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { type Goal, planQuestions } from './plan-question.ts';
import { StartDetail } from './start-detail.tsx';
import { StartsTable } from './starts-table.tsx';
import { costsOf, startRows } from './starts-view.ts';

/** How many to start of each variant, before a batch and during it, and what that rests on. */
export const StartsPage = ({ batches, rack }: PlanPageProps) => {
  const session = useSession();
  const view = session.view.value;
  const [goal, setGoal] = useState<Goal>('firsts');
  const [chosen, setChosen] = useState<string>();
  const [picked, setPicked] = useState<string>();
  const batch = batches.find((each) => each.batch === chosen) ?? batches[0];
  const id = batch?.batch;
  const rowsBefore = batch ? startRows(batch, { goal, answers: [] }) : [];
  const key = (
    rowsBefore.find((row) => row.key === picked) ?? rowsBefore.find(({ target }) => target.wanted > 0)
  )?.key;
  const costs = useCosts();
  const known = costsOf(costs.draft);
  const name = JSON.stringify(known);
  // Other ones whenever the view is: the shop behind it changes in place.
  // biome-ignore lint/correctness/useExhaustiveDependencies: costs are made anew at each drawing, and told by their name
  const questions = useMemo(
    () =>
      planQuestions(view.shop.registers, {
        batches: batchTargets(view.shop).filter((each) => each.batch === id),
        goal,
        whole: key === undefined ? undefined : { key, costs: known },
      }),
    [view, id, goal, key, name],
  );
  const { state, again } = useStudy('plan', questions);
  const last = latestOf(state);
  if (!batch) return null;
  // Answers to another question may be of other counts, so a row takes none but its own.
  const rows = startRows(batch, { goal, answers: last?.study.starts ?? [] });
  const shown = rows.find((row) => row.key === key);
  const isPast = batch.due !== null && batch.due < session.today();
  return (
    <PlanFrame page="starts" rack={rack} busy={state.kind === 'none' || state.kind === 'working'}>
      {batches.length > 1 && (
        <div class="plan-fields">
          <SelectField
            label={words.batch}
            options={batches.map(({ batch: value, name: label }) => ({ value, label }))}
            value={batch.batch}
            onChoose={setChosen}
            testId="starts-batch"
          />
        </div>
      )}
      <ChoiceRow
        label={words.goal}
        choices={(['firsts', 'finished'] as const).map((value) => ({ value, label: words.goals[value] }))}
        value={goal}
        onChoose={setGoal}
        testId="starts-goal"
      />
      <StudyStanding state={state} again={again} />
      {isPast && (
        <Notice tone="warn" title={words.past} testId="starts-past">
          {words.pastHelp}
        </Notice>
      )}
      {last?.study.judged === 0 && (
        <Notice tone="info" title={words.guess} testId="starts-guess">
          {words.guessHelp}
        </Notice>
      )}
      <div class="plan-page" data-old={state.kind !== 'ready' || undefined}>
        <Panel
          title={<span class="plan-name">{words.table(batch.name)}</span>}
          lead={`${words.tableLead(batch.chance)} ${words.goalSaid[goal]}`}
          actions={<Means label={studyWords.means}>{words.means}</Means>}
          testId="starts"
        >
          <StartsTable rows={rows} picked={key} onPick={setPicked} name={batch.name} />
        </Panel>
        {shown?.answer && (
          <StartDetail row={shown} answer={shown.answer} goal={goal} chance={batch.chance}>
            <CostsFields costs={costs} cheapest={shown.answer.whole?.cheapest ?? null} />
          </StartDetail>
        )}
      </div>
    </PlanFrame>
  );
};
