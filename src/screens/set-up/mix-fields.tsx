import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { holdSetUpWords as words } from '../../words/hold-set-up-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import type { Form } from '../parts/form/use-form.ts';
import type { MixDraft, MixKind } from './mix-draft.ts';
import type { StageDraft } from './stage-draft.ts';

interface MixFieldsProps {
  readonly form: Form<StageDraft>;
}

/** The fields of a draft that are typed as a text. */
type TypedField = Exclude<keyof MixDraft, 'mix' | 'by'>;

/** What is mixed for a hold, and how much of it. */
export const MixFields = ({ form }: MixFieldsProps) => {
  const { draft, change } = form;
  return (
    <>
      <ChoiceRow<MixKind>
        label={words.mix}
        choices={(['none', 'adhesive', 'finish'] as const).map((value) => ({
          value,
          label: words.mixes[value],
        }))}
        value={draft.mix}
        onChoose={(mix) => change({ mix })}
        testId="stage-mix"
      />
      {draft.mix === 'adhesive' && <AdhesiveFields form={form} />}
      {draft.mix === 'finish' && <FinishFields form={form} />}
    </>
  );
};

interface AmountProps extends MixFieldsProps {
  readonly field: TypedField;
  readonly label: string;
  readonly unit: string;
  readonly hint?: string;
  readonly optional?: boolean;
}

const Amount = ({ form, field, label, unit, hint, optional }: AmountProps) => (
  <Field
    label={label}
    hint={hint}
    optional={optional ? setUpWords.optional : undefined}
    kind="number"
    unit={unit}
    value={form.draft[field]}
    onText={(text) => form.change({ [field]: text })}
    error={form.errorAt(field)}
    testId={`mix-${field}`}
  />
);

const AdhesiveFields = ({ form }: MixFieldsProps) => {
  const { draft, change } = form;
  return (
    <>
      <Amount form={form} field="gramsEach" label={words.gramsEach} unit={words.grams} />
      <fieldset class="set-up-bill">
        <legend class="field-label">{words.ratio}</legend>
        <div class="set-up-pair">
          <Amount form={form} field="resin" label={words.resin} unit="" />
          <Amount form={form} field="hardener" label={words.hardener} unit="" />
        </div>
      </fieldset>
      <ChoiceRow
        label={words.by}
        choices={(['weight', 'volume'] as const).map((value) => ({ value, label: words.byWhat[value] }))}
        value={draft.by}
        onChoose={(by) => change({ by })}
        testId="mix-by"
      />
      {draft.by === 'volume' && (
        <fieldset class="set-up-bill">
          <legend class="field-label">{words.densities}</legend>
          <div class="set-up-pair">
            <Amount form={form} field="resinDensity" label={words.resin} unit={words.density} optional />
            <Amount
              form={form}
              field="hardenerDensity"
              label={words.hardener}
              unit={words.density}
              optional
            />
          </div>
        </fieldset>
      )}
      <Amount form={form} field="waste" label={words.waste} hint={words.wasteHint} unit={words.percent} />
      <Amount form={form} field="pot" label={words.pot} unit={words.min} />
      <Amount
        form={form}
        field="secondsEach"
        label={words.secondsEach}
        hint={words.secondsEachHint}
        unit={words.seconds}
        optional
      />
    </>
  );
};

const FinishFields = ({ form }: MixFieldsProps) => (
  <>
    <Amount form={form} field="mlEach" label={words.mlEach} unit={words.ml} />
    <Amount form={form} field="waste" label={words.waste} hint={words.wasteHint} unit={words.percent} />
    <div class="set-up-pair">
      <Amount form={form} field="recoatFrom" label={words.recoatFrom} unit={words.h} optional />
      <Amount form={form} field="recoatUntil" label={words.recoatUntil} unit={words.h} optional />
    </div>
  </>
);
