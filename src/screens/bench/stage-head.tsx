import type { Grade } from '../../domain/log/place.ts';
import { BigCode } from '../../ui/bench/big-code.tsx';
import { BigCount } from '../../ui/bench/big-count.tsx';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { nameOf } from '../../words/names.ts';
import { gradesWords } from '../../words/outcome-words.ts';
import { stageWords as words } from '../../words/stage-words.ts';
import { useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';
import type { BenchView } from './bench-view.ts';

/** The tray's code and running count, readable from two metres, with what the pieces are. */
export const StageHead = ({ view, onGrade }: { view: BenchView; onGrade: (grade: Grade) => void }) => {
  const { registers } = useShop();
  const { tray, stage, waiting, held, grade } = view;
  const hold = stage.kind === 'hold';
  return (
    <>
      <BigCode code={tray.code} name={words.tray(tray.code)} testId="stage-code" />
      <div class="stage-counts">
        <BigCount
          count={waiting[grade]}
          label={grade === 'second' ? words.seconds : hold ? words.leftToLoad : words.left}
          tone={waiting[grade] < 0 ? 'flaw' : 'plain'}
          testId="stage-left"
        />
        {hold && (
          <BigCount
            count={held[grade]}
            label={words.leftHeld}
            tone={held[grade] < 0 ? 'flaw' : 'plain'}
            testId="stage-held"
          />
        )}
      </div>
      {both(waiting, held) && (
        <div class="stage-grades">
          <ChoiceRow
            label={words.grade}
            choices={(['first', 'second'] as const).map((value) => ({
              value,
              label: words.gradeCount(gradesWords[value], waiting[value] + held[value]),
            }))}
            value={grade}
            onChoose={onGrade}
            size="bench-small"
            testId="stage-grade"
          />
        </div>
      )}
      <div class="stage-variant">
        <h1 dir="auto">{stage.name}</h1>
        <span dir="auto">{nameOf(registers, { register: 'variant', id: tray.variant })}</span>
        <WoodName species={tray.species} />
      </div>
    </>
  );
};

function both(waiting: BenchView['waiting'], held: BenchView['held']): boolean {
  return waiting.first + held.first > 0 && waiting.second + held.second > 0;
}
