import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import { type Adhesive, isTooLittle } from '../../../domain/hold/mix.ts';
import type { StageId } from '../../../domain/log/ids.ts';
import { Field } from '../../../ui/field/field.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { mixWords as words } from '../../../words/mix-words.ts';
import { LearntTime } from './learnt-time.tsx';
import { type MixLine, mixPlan } from './mix-view.ts';
import { PotClock } from './pot-clock.tsx';

const day = 24 * 60 * 60;

export interface AdhesivePanelsProps {
  readonly stage: StageId;
  readonly mix: Adhesive;
  readonly pieces: number;
}

/** What is weighed for each mix, as many mixes as the pot life asks for, and the pot life itself. */
export const AdhesivePanels = ({ stage, mix, pieces }: AdhesivePanelsProps) => {
  const [typed, setTyped] = useState(mix.secondsEach === null ? '' : String(mix.secondsEach));
  const isSaid = typed.trim() !== '';
  const seconds = readWholeNumber(typed, { least: 1, most: day });
  const plan = mixPlan(mix, { pieces, secondsEach: seconds.ok ? seconds.value : null });
  return (
    <>
      <div class="mix-asked">
        <Field
          label={words.secondsEach}
          hint={isSaid ? undefined : words.sayTime}
          kind="number"
          value={typed}
          onText={setTyped}
          error={isSaid && !seconds.ok ? words.badSeconds : undefined}
          testId="mix-seconds"
        />
        <LearntTime stage={stage} onLearnt={(found) => setTyped(String(found))} />
      </div>
      {plan.kind === 'too-slow' ? (
        <Notice tone="error" title={words.tooSlow} testId="mix-too-slow" />
      ) : (
        plan.lines.map((line) => <Mix key={line.first} line={line} of={plan.mixes} mix={mix} />)
      )}
      <PotClock stage={stage} minutes={mix.potMinutes} />
    </>
  );
};

interface MixProps {
  readonly line: MixLine;
  /** So many mixes a round takes. */
  readonly of: number;
  readonly mix: Adhesive;
}

const Mix = ({ line: { first, mixes, pieces, amounts }, of, mix }: MixProps) => {
  const { mixed, weighed, measured } = amounts;
  const title = of === 1 ? words.oneMix(pieces) : words.mixes({ first, mixes, pieces });
  return (
    <Panel title={title} lead={words.mixed(mixed)} testId={`mix-${first}`}>
      {weighed ? (
        <dl class="mix-amounts">
          <div>
            <dt>{words.resin}</dt>
            <dd data-testid={`resin-${first}`}>{words.grams(weighed.resin)}</dd>
            {measured && <dd>{words.ml(measured.resin)}</dd>}
          </div>
          <div>
            <dt>{words.hardener}</dt>
            <dd data-testid={`hardener-${first}`}>{words.grams(weighed.hardener)}</dd>
            {measured && <dd>{words.ml(measured.hardener)}</dd>}
          </div>
        </dl>
      ) : (
        <>
          <p class="mix-parts">{words.parts(mix.resin / 100, mix.hardener / 100)}</p>
          <p>{words.notWeighed}</p>
        </>
      )}
      {isTooLittle(amounts) && (
        <Notice tone="warn" title={words.tooLittle}>
          {words.tooLittleDetail}
        </Notice>
      )}
    </Panel>
  );
};
