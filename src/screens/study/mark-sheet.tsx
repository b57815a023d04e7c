import { type MarkId, readId, speciesId, stageId } from '../../domain/log/ids.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { MarkFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { longestMarkNote } from '../../domain/set-up/text-schema.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { useSession } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { useForm } from '../parts/form/use-form.ts';
import { type MarkDraft, type MarkStart, markDraftOf, readMark } from './mark-draft.ts';

const kept = keptDrafts<MarkDraft>();

export interface MarkSheetProps {
  readonly id: MarkId;
  readonly title: string;
  /** The mark as it is, or what a new one begins with. */
  readonly mark: MarkFact | MarkStart;
  readonly onClose: () => void;
}

const allWoods = 'all';

/** What was done, where and when. */
export const MarkSheet = ({ id, title, mark, onClose }: MarkSheetProps) => {
  const session = useSession();
  const { registers } = session.view.value.shop;
  const now = { at: session.now(), zone: session.zone() };
  const known = 'note' in mark ? mark : undefined;
  const toSet = (value: MarkFact) => ({ register: 'mark', id, value }) as const;
  const form = useForm({
    id,
    kept,
    start: markDraftOf(mark, now),
    read: (draft) => readMark(draft, now),
    toSet: (value) => toSet({ ...value, answers: mark.answers, retired: known?.retired ?? false }),
  });
  const { draft, change } = form;
  const stages = liveStages(registers);
  const offered = draft.stage && !stages.includes(draft.stage) ? [...stages, draft.stage] : stages;
  return (
    <EditSheet
      title={title}
      kind="mark"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={known && { is: known.retired, onChange: (retired) => form.put(toSet({ ...known, retired })) }}
    >
      {!known && mark.answers && <p>{words.answerHint}</p>}
      <Field
        label={words.note}
        hint={words.noteHint}
        value={draft.note}
        onText={(note) => change({ note })}
        rows={2}
        longest={longestMarkNote}
        tooLong={() => setUpWords.tooLong([...tidyText(draft.note)].length, longestMarkNote)}
        error={form.errorAt('note')}
        testId="mark-note"
      />
      {/* Where a signal was answered is no matter of choice. */}
      {!mark.answers && (
        <>
          <SelectField
            label={words.stage}
            options={offered.map((each) => ({
              value: each,
              label: nameOf(registers, { register: 'stage', id: each }),
            }))}
            value={draft.stage}
            nothing=""
            onChoose={(stage) => change({ stage: readId(stageId, stage) ?? undefined })}
            error={form.errorAt('stage')}
            testId="mark-stage"
          />
          <SelectField
            label={words.wood}
            options={[
              { value: allWoods, label: words.allWoods },
              ...factsOf(registers, 'species').map((wood) => ({ value: wood.id, label: wood.fact.name })),
            ]}
            value={draft.species ?? allWoods}
            onChoose={(species) =>
              change({ species: species === allWoods ? null : readId(speciesId, species) })
            }
            testId="mark-species"
          />
        </>
      )}
      <div class="study-when">
        <Field
          label={words.when}
          kind="date"
          value={draft.day}
          onText={(day) => change({ day })}
          error={form.errorAt('day')}
          testId="mark-day"
        />
        <Field
          label={words.hour}
          kind="time"
          value={draft.time}
          onText={(time) => change({ time })}
          testId="mark-time"
        />
      </div>
    </EditSheet>
  );
};
