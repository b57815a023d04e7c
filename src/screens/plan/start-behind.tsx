import type { StartAnswer } from '../../domain/plan/starts/start-study.ts';
import type { VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { DataTable } from '../../ui/table/data-table.tsx';
import { share } from '../../words/fine-number-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { useShop } from '../parts/app-context.ts';
import { counted, type Goal } from './plan-question.ts';

export interface StartBehindProps {
  readonly target: VariantTarget;
  readonly answer: StartAnswer;
  readonly goal: Goal;
}

/** What is in work by stage and grade, and what is believed of each stage. */
export const StartBehind = ({ target, answer, goal }: StartBehindProps) => {
  const { registers } = useShop();
  const stageName = (id: string) => nameOf(registers, { register: 'stage', id });
  return (
    <>
      {target.inFlight.length === 0 ? (
        <p>{words.nothingFlies}</p>
      ) : (
        <>
          <DataTable
            caption={words.flightTable}
            columns={[
              { key: 'stage', head: words.stage, cell: ({ stage }) => stageName(stage) },
              {
                key: 'firsts',
                head: words.firsts,
                numeric: true,
                cell: ({ pieces }) => wholeNumber(pieces.first),
              },
              {
                key: 'seconds',
                head: words.seconds,
                numeric: true,
                cell: ({ pieces }) => wholeNumber(pieces.second),
              },
              { key: 'back', head: words.back, numeric: true, cell: ({ sentBack }) => wholeNumber(sentBack) },
              {
                key: 'count',
                head: words.count,
                numeric: true,
                cell: ({ pieces }) => wholeNumber(counted(pieces, goal)),
              },
            ]}
            rows={target.inFlight}
            rowKey={({ stage }) => stage}
            testId="start-flight"
          />
          <p class="plan-note">{words.flightMeans}</p>
        </>
      )}
      <DataTable
        caption={words.beliefTable}
        columns={[
          { key: 'stage', head: words.stage, cell: ({ stage }) => stageName(stage) },
          {
            key: 'judged',
            head: words.judged,
            numeric: true,
            cell: ({ through, tried }) => words.of(through, tried),
          },
          {
            key: 'pooled',
            head: words.pooled,
            numeric: true,
            cell: ({ alpha, beta }) => share(alpha / (alpha + beta)),
          },
          { key: 'from', head: words.from, cell: ({ from }) => words.sources[from] },
        ]}
        rows={answer.beliefs}
        rowKey={({ stage }) => stage}
        testId="start-beliefs"
      />
      <p class="plan-note">{words.beliefMeans}</p>
    </>
  );
};
