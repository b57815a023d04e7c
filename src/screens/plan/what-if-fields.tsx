import type { ForecastQuestion } from '../../domain/plan/forecast/forecast.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { nameOf } from '../../words/names.ts';
import { whatIfWords as words } from '../../words/what-if-words.ts';
import { useShop } from '../parts/app-context.ts';
import type { PlanAbout } from './forecast-view.ts';
import { type WhatIfDraft, whatIfChoices, whatIfProblems } from './what-if-view.ts';

export interface WhatIfFieldsProps {
  readonly question: ForecastQuestion;
  readonly about: PlanAbout;
  readonly draft: WhatIfDraft;
  readonly onChange: (draft: WhatIfDraft) => void;
  readonly onAsk: () => void;
  readonly onForget: () => void;
}

/** The changes to ask about. */
export const WhatIfFields = ({ question, about, draft, onChange, onAsk, onForget }: WhatIfFieldsProps) => {
  const { registers } = useShop();
  const problems = whatIfProblems(draft);
  const choices = whatIfChoices(question, about);
  const stageOption = ({ value, stage: id }: (typeof choices.stages)[number]) => ({
    value,
    label: nameOf(registers, { register: 'stage', id }),
  });
  const select = (
    field: 'resource' | 'hold' | 'stage' | 'variant',
    options: readonly { readonly value: string; readonly label: string }[],
  ) => (
    <SelectField
      label={words[field]}
      options={[{ value: '', label: words.nothing }, ...options]}
      value={draft[field]}
      onChoose={(value) => onChange({ ...draft, [field]: value })}
      testId={`what-if-${field}`}
    />
  );
  const typed = (field: keyof typeof labels, unit?: string) => (
    <Field
      label={labels[field].label}
      hint={labels[field].hint}
      unit={unit}
      kind="number"
      value={draft[field]}
      onText={(text) => onChange({ ...draft, [field]: text })}
      error={problems[field]}
      testId={`what-if-${field}`}
    />
  );
  return (
    <Panel title={words.change} lead={words.changeLead} testId="what-if-change">
      <div class="plan-edit">
        <div class="plan-fields">
          {select(
            'resource',
            choices.resources.map(({ value, name }) => ({ value, label: name })),
          )}
          {typed('places')}
          {select('hold', choices.holds.map(stageOption))}
          {typed('cureHours', 'h')}
          {select('stage', choices.stages.map(stageOption))}
          {typed('percent', '%')}
          {select(
            'variant',
            choices.variants.map(({ value, key }) => ({
              value,
              label: nameOf(registers, { register: 'variant', id: key.slice(key.indexOf('/') + 1) }),
            })),
          )}
          {typed('fewer')}
          {typed('saturday', 'h')}
          {typed('price')}
          {typed('monthly')}
        </div>
        <div class="plan-acts">
          <PressButton tone="go" icon="check" label={words.ask} onAct={onAsk} testId="what-if-ask" />
          <PressButton
            tone="quiet"
            icon="undo"
            label={words.forget}
            onAct={onForget}
            testId="what-if-forget"
          />
        </div>
      </div>
    </Panel>
  );
};

const labels = {
  places: { label: words.places, hint: undefined },
  cureHours: { label: words.cureHours, hint: words.cureHint },
  percent: { label: words.percent, hint: undefined },
  fewer: { label: words.fewer, hint: undefined },
  saturday: { label: words.saturday, hint: words.saturdayHint },
  price: { label: words.price, hint: words.priceHint },
  monthly: { label: words.monthly, hint: words.monthlyHint },
} as const;
