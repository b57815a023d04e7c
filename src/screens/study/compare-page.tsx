import { useEffect, useMemo, useState } from 'preact/hooks';
import { SelectField } from '../../ui/field/select-field.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { compareWords as words } from '../../words/compare-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession } from '../parts/app-context.ts';
import { comparisonOf, firstChoice } from './compare-choice.ts';
import { CompareForm } from './compare-form.tsx';
import { lotNames, onlyPlace } from './compare-names.ts';
import { CompareResult } from './compare-result.tsx';
import { type Measure, measures } from './compare-view.ts';
import type { PageProps } from './study-page-props.ts';

/** Two lots of pieces held against each other, with how sure the difference is. */
export const ComparePage = ({ study, questions, asked, ask }: PageProps) => {
  const session = useSession();
  const { registers } = session.view.value.shop;
  const [choice, setChoice] = useState(firstChoice);
  const [measure, setMeasure] = useState<Measure>('clean');
  const today = session.today();
  const comparison = useMemo(() => comparisonOf(choice, today), [choice, today]);
  useEffect(() => {
    ask({ comparison });
    return () => ask({ comparison: null });
  }, [ask, comparison]);
  const isAnswered = asked.comparison !== null && questions.comparison === asked.comparison;
  return (
    <>
      <CompareForm choice={choice} onChoose={setChoice}>
        <SelectField
          label={words.measure}
          options={measures.map((value) => ({ value, label: words.measures[value] }))}
          value={measure}
          onChoose={setMeasure}
          testId="compare-measure"
        />
      </CompareForm>
      {asked.comparison === null ? null : !isAnswered || !study.comparison ? (
        <p class="study-note">{studyWords.working}</p>
      ) : study.comparison.length === 0 ? (
        <EmptyState icon="split" title={words.nothing}>
          {words.nothingHelp}
        </EmptyState>
      ) : (
        <CompareResult
          cells={study.comparison}
          measure={measure}
          place={onlyPlace(choice, registers)}
          lots={lotNames(choice, { registers, zone: session.zone() })}
        />
      )}
    </>
  );
};
