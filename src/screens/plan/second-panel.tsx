import { useState } from 'preact/hooks';
import type { CostQuestion, CostStudy } from '../../domain/plan/cost/cost-study.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { costWords as words } from '../../words/cost-words.ts';
import { nameOf } from '../../words/names.ts';
import { useShop } from '../parts/app-context.ts';
import { secondOf } from './cost-view.ts';

/** Whether a blemished piece is worth finishing as a second. */
export const SecondPanel = ({ study, question }: { study: CostStudy; question: CostQuestion }) => {
  const { registers } = useShop();
  const [picked, setPicked] = useState<string>();
  const [at, setAt] = useState<string>();
  const [saves, setSaves] = useState('');
  const of = study.variants.find(({ variant }) => variant === picked) ?? study.variants[0];
  const stage = of?.stages.find((each) => each.stage === at)?.stage ?? of?.stages[0]?.stage;
  if (!of || stage === undefined) return null;
  const verdict = secondOf(question, of, { stage, saves });
  return (
    <Panel title={words.second} lead={words.secondLead} testId="cost-second">
      <div class="plan-fields">
        <SelectField
          label={words.variant}
          options={study.variants.map(({ variant: value }) => ({
            value,
            label: nameOf(registers, { register: 'variant', id: value }),
          }))}
          value={of.variant}
          onChoose={setPicked}
          testId="second-variant"
        />
        <SelectField
          label={words.standsAt}
          options={of.stages.map(({ stage: value }) => ({
            value,
            label: nameOf(registers, { register: 'stage', id: value }),
          }))}
          value={stage}
          onChoose={setAt}
          testId="second-stage"
        />
        <Field
          label={words.saves}
          hint={words.savesHint}
          kind="number"
          value={saves}
          onText={setSaves}
          error={verdict === undefined ? words.badSaves : undefined}
          testId="second-saves"
        />
      </div>
      <p class="plan-answer" role="status" data-testid="second-answer">
        {verdict && words.answer(verdict)}
      </p>
    </Panel>
  );
};
