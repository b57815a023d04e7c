import { readId, reasonId } from '../../domain/log/ids.ts';
import { Field } from '../../ui/field/field.tsx';
import { criterionWords } from '../../words/criterion-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { CriterionPhotos } from './criterion-photos.tsx';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { type ReasonDraft, readReason, reasonDraftOf } from './reason-draft.ts';

const kept = keptDrafts<ReasonDraft>();

/** The maker's reasons for a flaw; those of check stages are criteria, with what passes. */
export const Reasons = () => (
  <FactPage
    register="reason"
    kind="reason"
    lead={words.reasonsLead}
    addLabel={words.addReason}
    kept={kept}
    toId={(fresh) => readId(reasonId, fresh)}
    sheet={ReasonSheet}
    detail={({ fact }) => fact.passes ?? ''}
  />
);

const ReasonSheet = ({ id, now, onClose }: FactSheetProps<'reason'>) => {
  const form = useForm({
    id,
    kept,
    start: reasonDraftOf(now),
    read: readReason,
    toSet: (reason) => ({ register: 'reason', id, value: { ...reason, retired: now?.retired ?? false } }),
  });
  return (
    <EditSheet
      title={now ? words.editReason : words.addReason}
      kind="reason"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'reason', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={form.draft.name}
        onName={(name) => form.change({ name })}
        error={form.errorAt('name')}
        testId="reason-name"
      />
      <Field
        label={criterionWords.passes}
        hint={criterionWords.passesHint}
        optional={words.optional}
        value={form.draft.passes}
        onText={(passes) => form.change({ passes })}
        error={form.errorAt('passes')}
        testId="reason-passes"
      />
      {now && <CriterionPhotos reason={id} />}
    </EditSheet>
  );
};
