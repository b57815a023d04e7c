import { labelReading, signsToBear } from '../../domain/label/label-reading.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { readingWords, labelWords as words } from '../../words/label-words.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { type Form, useForm } from '../parts/form/use-form.ts';
import type { FactSheetProps } from './fact-page.tsx';
import {
  countFields,
  type LabelSizeDraft,
  labelSizeDraftOf,
  lengthFields,
  readLabelSize,
  sheetLengthFields,
} from './label-size-draft.ts';

export const keptLabelSizes: KeptDrafts<LabelSizeDraft> = keptDrafts<LabelSizeDraft>();

/** One size of label: how large, and how it lies on its sheet. */
export const LabelSizeSheet = ({ id, now, onClose }: FactSheetProps<'label-size'>) => {
  const { trays } = useShop();
  const form = useForm({
    id,
    kept: keptLabelSizes,
    start: labelSizeDraftOf(now),
    read: readLabelSize,
    toSet: (size) => ({ register: 'label-size', id, value: { ...size, retired: now?.retired ?? false } }),
  });
  const { draft, change } = form;
  const read = readLabelSize(draft);
  return (
    <EditSheet
      title={now ? words.editSize : words.addSize}
      kind="label-size"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'label-size', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={form.errorAt('name')}
        testId="label-size-name"
      />
      <ChoiceRow
        label={words.on}
        choices={[
          { value: 'sheet', label: words.onSheet, detail: words.onSheetDetail },
          { value: 'roll', label: words.onRoll, detail: words.onRollDetail },
        ]}
        value={draft.on}
        onChoose={(on) => change({ on })}
        testId="label-size-on"
      />
      <div class="set-up-pair">
        {lengthFields.map((field) => (
          <SizeField key={field} form={form} field={field} unit={words.mm} />
        ))}
      </div>
      {draft.on === 'sheet' && <SheetFields form={form} />}
      {read.ok && (
        <p role="status" data-testid="label-size-reading">
          {readingWords(labelReading(read.value, signsToBear(trays.values()))) ?? words.readable}
        </p>
      )}
    </EditSheet>
  );
};

const SheetFields = ({ form }: { form: Form<LabelSizeDraft> }) => {
  const [width, height, ...steps] = sheetLengthFields;
  return (
    <div class="set-up-pair">
      {[width, height].map((field) => (
        <SizeField key={field} form={form} field={field} unit={words.mm} />
      ))}
      {countFields.map((field) => (
        <SizeField key={field} form={form} field={field} />
      ))}
      {steps.map((field) => (
        <SizeField key={field} form={form} field={field} unit={words.mm} />
      ))}
    </div>
  );
};

interface SizeFieldProps {
  readonly form: Form<LabelSizeDraft>;
  readonly field: (typeof lengthFields | typeof sheetLengthFields | typeof countFields)[number];
  readonly unit?: string;
}

const SizeField = ({ form, field, unit }: SizeFieldProps) => (
  <Field
    label={words[field]}
    hint={field === 'acrossStep' ? words.acrossStepHint : undefined}
    kind="number"
    unit={unit}
    value={form.draft[field]}
    onText={(typed) => form.change({ [field]: typed })}
    error={form.errorAt(field)}
    testId={`label-size-${field}`}
  />
);
