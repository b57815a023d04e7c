import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { peopleWords as words } from '../../words/people-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { DaysOffField } from './days-off-field.tsx';
import type { FactSheetProps } from './fact-page.tsx';
import { type PersonDraft, personDraftOf, readPerson } from './person-draft.ts';
import { WeekField } from './week-field.tsx';

export const keptPeople: KeptDrafts<PersonDraft> = keptDrafts<PersonDraft>();

/** Name, hours, days off and rate of a person. */
export const PersonSheet = ({ id, now, onClose }: FactSheetProps<'person'>) => {
  const form = useForm({
    id,
    kept: keptPeople,
    start: personDraftOf(now),
    read: readPerson,
    toSet: (person) => ({ register: 'person', id, value: { ...person, retired: now?.retired ?? false } }),
  });
  const { draft, change, errorAt } = form;
  return (
    <EditSheet
      title={now ? setUpWords.editPerson : setUpWords.addPerson}
      kind="person"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'person', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="person-name"
      />
      <ChoiceRow
        label={words.hours}
        hint={words.hoursHint}
        choices={[
          { value: 'unsaid', label: words.unsaid, detail: words.unsaidDetail },
          { value: 'said', label: words.said },
        ]}
        value={draft.hours}
        onChoose={(hours) => change({ hours })}
        testId="person-hours"
      />
      {draft.hours === 'said' && (
        <WeekField week={draft.week} onWeek={(week) => change({ week })} error={errorAt('week')} />
      )}
      <DaysOffField daysOff={draft.daysOff} onDaysOff={(daysOff) => change({ daysOff })} />
      <Field
        label={words.hourCost}
        hint={words.hourCostHint}
        optional={setUpWords.optional}
        kind="number"
        value={draft.hourCost}
        onText={(hourCost) => change({ hourCost })}
        error={errorAt('hourCost')}
        testId="person-hour-cost"
      />
    </EditSheet>
  );
};
