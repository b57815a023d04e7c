import type { ComponentChildren } from 'preact';
import type { StartAnswer } from '../../domain/plan/starts/start-study.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { nameOf } from '../../words/names.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { Goal } from './plan-question.ts';
import { StartBehind } from './start-behind.tsx';
import { StartCharts } from './start-charts.tsx';
import { answerWords, guessIn, type StartRow } from './starts-view.ts';

export interface StartDetailProps {
  readonly row: StartRow;
  readonly answer: StartAnswer;
  readonly goal: Goal;
  /** Whole per cent. */
  readonly chance: number;
  /** The costs. */
  readonly children: ComponentChildren;
}

/** One variant: the answer in words, its curves, its costs, and what all of it rests on. */
export const StartDetail = ({ row, answer, goal, chance, children }: StartDetailProps) => {
  const { registers } = useShop();
  const { target } = row;
  const guess = guessIn(answer);
  const point = answer.smallest.kind === 'never-certain' ? answer.none : answer.smallest.point;
  return (
    <Panel
      title={<span class="plan-name">{nameOf(registers, { register: 'variant', id: target.variant })}</span>}
      testId="start-detail"
    >
      <div class="plan-block">
        <p class="plan-answer" data-testid="start-answer">
          {answerWords(row)}
        </p>
        <p class="plan-note">
          {words.average(point)} {words.inFlight(words.chance(answer.none.chance))}
        </p>
        {guess !== 'all' && guess.length > 0 && (
          <p class="plan-note" data-testid="start-part-guess">
            {words.partGuess(
              guess.map(({ stage }) => nameOf(registers, { register: 'stage', id: stage })).join(', '),
            )}
          </p>
        )}
        <Disclosure summary={words.behind} testId="start-behind">
          <InTurn>
            <StartBehind target={target} answer={answer} goal={goal} />
          </InTurn>
        </Disclosure>
        {answer.whole && (
          <StartCharts curve={answer.whole.curve} wanted={target.wanted} marks={marksOf(answer, chance)} />
        )}
        {children}
      </div>
    </Panel>
  );
};

/** Where on the curve the wanted chance is reached, and where it is cheapest; both may be one. */
function marksOf({ smallest, whole }: StartAnswer, chance: number) {
  const cheapest = whole?.cheapest;
  const marks = [
    ...(smallest.kind === 'starts' ? [{ at: smallest.point.starts, label: words.markWanted(chance) }] : []),
    ...(cheapest && cheapest.kind !== 'the-more-the-better'
      ? [{ at: cheapest.point.starts, label: words.markCheapest }]
      : []),
  ];
  return marks.toSorted((a, b) => a.at - b.at);
}
