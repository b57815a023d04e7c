import { type ResourceId, readId, resourceId } from '../../domain/log/ids.ts';
import { stagesOn } from '../../domain/rollup/hold-limit.ts';
import { factOf, type Registers } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { holdSetUpWords as words } from '../../words/hold-set-up-words.ts';
import { nameOf } from '../../words/names.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { FactPage, type FactSheetProps } from './fact-page.tsx';
import { type ResourceDraft, readResource, resourceDraftOf } from './resource-draft.ts';

const kept = keptDrafts<ResourceDraft>();

/** Clamps and racks, with the stages that share each. */
export const Resources = () => {
  const { registers } = useShop();
  return (
    <FactPage
      register="resource"
      kind="resource"
      lead={words.resourcesLead}
      addLabel={words.addResource}
      kept={kept}
      toId={(fresh) => readId(resourceId, fresh)}
      sheet={ResourceSheet}
      detail={({ id, fact }) => {
        const stages = stagesOf(registers, id);
        const places = fact.capacity === null ? words.noLimit : words.placesOf(fact.capacity);
        return stages === '' ? places : `${places} · ${words.usedBy(stages)}`;
      }}
    />
  );
};

/** The stages in use that share it, by name. */
function stagesOf(registers: Registers, id: ResourceId): string {
  return stagesOn(registers, id)
    .filter((stage) => !factOf(registers, { register: 'stage', id: stage })?.retired)
    .map((stage) => nameOf(registers, { register: 'stage', id: stage }))
    .join(', ');
}

const ResourceSheet = ({ id, now, onClose }: FactSheetProps<'resource'>) => {
  const stages = stagesOf(useShop().registers, id);
  const form = useForm({
    id,
    kept,
    start: resourceDraftOf(now),
    read: readResource,
    toSet: (value) => ({
      register: 'resource',
      id,
      value: { ...value, retired: now?.retired ?? false },
    }),
  });
  const { draft, change, errorAt } = form;
  return (
    <EditSheet
      title={now ? words.editResource : words.addResource}
      kind="resource"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          refusedBecause: stages === '' ? undefined : words.inUse(stages),
          onChange: (retired) => form.put({ register: 'resource', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="resource-name"
      />
      <Field
        label={words.places}
        hint={setUpWords.capacityHint}
        optional={setUpWords.optional}
        kind="number"
        value={draft.capacity}
        onText={(capacity) => change({ capacity })}
        error={errorAt('capacity')}
        testId="resource-capacity"
      />
    </EditSheet>
  );
};
