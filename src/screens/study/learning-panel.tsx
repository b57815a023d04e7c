import { useState } from 'preact/hooks';
import type { StageId } from '../../domain/log/ids.ts';
import type { StageLearning } from '../../domain/study/stage-learning.ts';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { timeStudyWords as words } from '../../words/time-study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { SavedChart } from '../parts/picture/saved-chart.tsx';
import { curveAlong, learnersInOrder, paceOf } from './learning-view.ts';

/** Whether the work of a hand at a stage goes quicker with practice. */
export const LearningPanel = ({
  learning,
  route,
}: {
  learning: readonly StageLearning[];
  route: readonly StageId[];
}) => {
  const { registers } = useShop();
  const [picked, setPicked] = useState('');
  const learners = learnersInOrder(learning, route);
  const shown = learners.find(({ key }) => key === picked) ?? learners[0];
  const nameOfLearner = ({ stage, person }: StageLearning) =>
    words.curveName(
      nameOf(registers, { register: 'stage', id: stage }),
      person === null ? studyWords.nobody : nameOf(registers, { register: 'person', id: person }),
    );
  return (
    <Panel
      title={words.learning}
      lead={words.learningLead}
      actions={<Means label={studyWords.means}>{words.learningMeans}</Means>}
      testId="learning"
    >
      {shown ? (
        <>
          <SelectField
            label={words.curve}
            options={learners.map(({ key, learner }) => ({ value: key, label: nameOfLearner(learner) }))}
            value={shown.key}
            onChoose={setPicked}
            testId="learning-of"
          />
          <Learner learner={shown.learner} name={nameOfLearner(shown.learner)} />
        </>
      ) : (
        <p>{words.noLearning}</p>
      )}
    </Panel>
  );
};

const Learner = ({ learner, name }: { learner: StageLearning; name: string }) => {
  const { curve, points } = learner;
  return (
    <>
      <p class="study-verdict">{words[paceOf(curve)]}</p>
      <p class="study-note">{words.rate(curve.rate, curve.rateInterval)}</p>
      <SavedChart
        title={name}
        x={{
          values: points.map(({ number }) => number),
          label: words.made,
          show: words.piecesUpTo,
          scale: 'log',
        }}
        y={{ label: words.perPiece, show: words.minutes, least: 0 }}
        series={[
          {
            key: 'times',
            label: words.dots,
            values: points.map(({ minutes }) => minutes),
            drawn: 'points',
            tone: 'copper',
          },
          {
            key: 'curve',
            label: words.fitted,
            values: curveAlong(learner),
            drawn: 'line',
            tone: 'plain',
          },
        ]}
        tableHead={words.made}
        texts={{ ...studyWords.chart, asTable: studyWords.asTable }}
        testId="learning-chart"
      />
    </>
  );
};
