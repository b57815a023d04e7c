import { useState } from 'preact/hooks';
import type { StageId } from '../../domain/log/ids.ts';
import { type StageFact, type StageKind, stageKinds } from '../../domain/set-up/facts.ts';
import { longestNote, problemOfNote } from '../../domain/set-up/text.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { stageKindWords } from '../../words/outcome-words.ts';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { EditSheet } from './edit-sheet.tsx';
import { FlawButtonsEdit } from './flaw-buttons-edit.tsx';
import { NameField } from './name-field.tsx';
import { draftOf, readCapacity, readCure, type StageDraft, stageFactOf } from './stage-draft.ts';
import { useSave } from './use-save.ts';

export interface StageSheetProps {
  readonly id: StageId;
  readonly now: StageFact | undefined;
  readonly onClose: () => void;
}

/** Name, kind, cure, flaw buttons and caution of a stage. */
export const StageSheet = ({ id, now, onClose }: StageSheetProps) => {
  const { save, errorAt } = useSave();
  const [draft, setDraft] = useState(draftOf(now));
  const change = (part: Partial<StageDraft>) => setDraft({ ...draft, ...part });
  const saveAs = async (retired: boolean) => {
    const value = stageFactOf({ ...draft, retired });
    if (!value || problemOfNote(draft.caution)) return;
    if (await save({ register: 'stage', id, value })) onClose();
  };
  return (
    <EditSheet
      title={now ? words.stages : words.addStage}
      kind="stage"
      onClose={onClose}
      onSave={() => void saveAs(draft.retired)}
      retired={now && { is: now.retired, onChange: () => void saveAs(!now.retired) }}
      error={errorAt('other')}
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="stage-name"
      />
      <ChoiceRow<StageKind>
        label={words.kind}
        choices={stageKinds.map((value) => ({ value, label: stageKindWords[value] }))}
        value={draft.kind}
        onChoose={(kind) => change({ kind })}
        testId="stage-kind"
      />
      {draft.kind === 'hold' && <HoldFields draft={draft} onChange={change} />}
      <ChoiceRow
        label={words.bulk}
        choices={[
          { value: 'no', label: words.bulkNo },
          { value: 'yes', label: words.bulkYes },
        ]}
        value={draft.bulk ? 'yes' : 'no'}
        onChoose={(value) => change({ bulk: value === 'yes' })}
      />
      <FlawButtonsEdit reasons={draft.reasons} onReasons={(reasons) => change({ reasons })} />
      <Field
        label={words.caution}
        hint={words.cautionHint}
        rows={4}
        value={draft.caution}
        onText={(caution) => change({ caution })}
        longest={longestNote}
        tooLong={(length) => words.tooLong(length, longestNote)}
      />
    </EditSheet>
  );
};

const HoldFields = ({
  draft,
  onChange,
}: {
  draft: StageDraft;
  onChange: (part: Partial<StageDraft>) => void;
}) => {
  const capacity = readCapacity(draft.capacity);
  return (
    <>
      <Field
        label={words.cureHours}
        kind="number"
        value={draft.cureHours}
        onText={(cureHours) => onChange({ cureHours })}
        error={readCure(draft.cureHours) === null ? words.badHours : undefined}
        testId="stage-cure"
      />
      <Field
        label={words.capacity}
        hint={words.capacityHint}
        kind="number"
        value={draft.capacity}
        onText={(typed) => onChange({ capacity: typed })}
        error={capacity.ok ? undefined : numberProblemWords(capacity.problem)}
        testId="stage-capacity"
      />
    </>
  );
};
