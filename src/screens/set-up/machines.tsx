import { machineId, readId, type StageId } from '../../domain/log/ids.ts';
import type { MachineFact } from '../../domain/set-up/facts.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords } from '../../words/set-up-words.ts';
import { woodCareWords as words } from '../../words/wood-care-words.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { type MachineDraft, machineDraftOf, readMachine } from './machine-draft.ts';
import { inRouteOrder } from './set-up-view.ts';

const kept = keptDrafts<MachineDraft>();

/** Machines with their duty limits and speeds. */
export const Machines = () => (
  <FactPage
    register="machine"
    kind="machine"
    lead={words.machinesLead}
    addLabel={words.addMachine}
    kept={kept}
    toId={(fresh) => readId(machineId, fresh)}
    sheet={MachineSheet}
    detail={({ fact }) => limitsOf(fact)}
  />
);

function limitsOf({ duty, mostTurns }: MachineFact): string {
  const limits = [
    ...(duty ? [words.dutyOf(duty.on, duty.off)] : []),
    ...(mostTurns === null ? [] : [words.turnsOf(mostTurns)]),
  ];
  return limits.join(' · ') || words.noLimit;
}

const MachineSheet = ({ id, now, onClose }: FactSheetProps<'machine'>) => {
  const form = useForm({
    id,
    kept,
    start: machineDraftOf(now),
    read: readMachine,
    toSet: (machine) => ({
      register: 'machine',
      id,
      value: { ...machine, retired: now?.retired ?? false },
    }),
  });
  const { draft, change, errorAt } = form;
  return (
    <EditSheet
      title={now ? words.editMachine : words.addMachine}
      kind="machine"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'machine', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="machine-name"
      />
      <StagesField stages={draft.stages} onStages={(stages) => change({ stages })} />
      <ChoiceRow
        label={words.rests}
        choices={[
          { value: 'no', label: words.restsNo },
          { value: 'yes', label: words.restsYes },
        ]}
        value={draft.rests}
        onChoose={(rests) => change({ rests })}
        testId="machine-rests"
      />
      {draft.rests === 'yes' && (
        <div class="set-up-pair">
          <Field
            label={words.minutesOn}
            kind="number"
            value={draft.on}
            onText={(on) => change({ on })}
            error={errorAt('on')}
            testId="machine-on"
          />
          <Field
            label={words.minutesOff}
            kind="number"
            value={draft.off}
            onText={(off) => change({ off })}
            error={errorAt('off')}
            testId="machine-off"
          />
        </div>
      )}
      <Field
        label={words.mostTurns}
        hint={words.mostTurnsHint}
        optional={setUpWords.optional}
        kind="number"
        value={draft.mostTurns}
        onText={(mostTurns) => change({ mostTurns })}
        error={errorAt('mostTurns')}
        testId="machine-turns"
      />
    </EditSheet>
  );
};

interface StagesFieldProps {
  readonly stages: readonly StageId[];
  readonly onStages: (stages: readonly StageId[]) => void;
}

/** Which stages are worked on the machine. One that was put away stays while it is chosen. */
const StagesField = ({ stages, onStages }: StagesFieldProps) => {
  const { registers } = useShop();
  const all = inRouteOrder(registers, factsOf(registers, 'stage')).filter(
    ({ id, fact }) => stages.includes(id) || (fact.kind === 'bench' && !fact.retired),
  );
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.machineStages}</legend>
      <p class="field-hint">{words.machineStagesHint}</p>
      <ul class="set-up-rack">
        {all.map(({ id, fact }) => (
          <li key={id}>
            <PressButton
              label={fact.name}
              selected={stages.includes(id)}
              onAct={() =>
                onStages(stages.includes(id) ? stages.filter((each) => each !== id) : [...stages, id])
              }
              testId={`machine-stage-${id}`}
            />
          </li>
        ))}
      </ul>
    </fieldset>
  );
};
