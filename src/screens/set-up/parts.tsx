import { partId, readId } from '../../domain/log/ids.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { woodCareWords } from '../../words/wood-care-words.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { cleanedInForm, isFitted, type PartDraft, partDraftOf, partSorts, readPart } from './part-draft.ts';

const kept = keptDrafts<PartDraft>();

/** Cores, ferrules, blanks and consumables. */
export const Parts = () => (
  <FactPage
    register="part"
    kind="part"
    lead={words.partsLead}
    addLabel={words.addPart}
    kept={kept}
    toId={(fresh) => readId(partId, fresh)}
    sheet={PartSheet}
    detail={({ fact }) => words.sorts[fact.sort]}
  />
);

const PartSheet = ({ id, now, onClose }: FactSheetProps<'part'>) => {
  const form = useForm({
    id,
    kept,
    start: partDraftOf(now),
    read: readPart,
    toSet: (part) => ({ register: 'part', id, value: { ...part, retired: now?.retired ?? false } }),
  });
  return (
    <EditSheet
      title={now ? words.editPart : words.addPart}
      kind="part"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'part', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={form.draft.name}
        onName={(name) => form.change({ name })}
        error={form.errorAt('name')}
        testId="part-name"
      />
      <ChoiceRow
        label={words.sort}
        choices={partSorts.map((value) => ({ value, label: words.sorts[value] }))}
        value={form.draft.sort}
        onChoose={(sort) => form.change({ sort })}
        testId="part-sort"
      />
      {isFitted(form.draft.sort) && (
        <Field
          label={woodCareWords.fitDiameter}
          hint={woodCareWords.fitDiameterHint}
          optional={words.optional}
          kind="number"
          unit={woodCareWords.mm}
          value={form.draft.fitDiameter}
          onText={(fitDiameter) => form.change({ fitDiameter })}
          error={form.errorAt('fitDiameter')}
          testId="part-fit-diameter"
        />
      )}
      <Field
        label={words.pieceCost}
        hint={words.pieceCostHint}
        optional={words.optional}
        kind="number"
        value={form.draft.cost}
        onText={(cost) => form.change({ cost })}
        error={form.errorAt('cost')}
        testId="part-cost"
      />
      <Field
        label={words.lowMark}
        hint={words.lowMarkHint}
        optional={words.optional}
        kind="number"
        value={form.draft.lowMark}
        onText={(lowMark) => form.change({ lowMark })}
        error={form.errorAt('lowMark')}
        testId="part-low-mark"
      />
      <ChoiceRow
        label={words.salvaged}
        choices={(['to-clean', 'shelf'] as const).map((value) => ({ value, label: words.salvagedTo[value] }))}
        value={cleanedInForm(form.draft) ? 'to-clean' : 'shelf'}
        onChoose={(to) => form.change({ cleaned: to === 'to-clean' })}
        testId="part-saved"
      />
    </EditSheet>
  );
};
