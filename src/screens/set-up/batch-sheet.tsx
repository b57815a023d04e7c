import { usualChance } from '../../domain/set-up/batch-facts.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { batchChanceWords } from '../../words/people-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { type Form, useForm } from '../parts/form/use-form.ts';
import {
  type BatchDraft,
  batchDraftOf,
  inWork,
  readBatch,
  variantsToWant,
  wantedProblem,
} from './batch-draft.ts';
import type { FactSheetProps } from './fact-page.tsx';

export const keptBatches: KeptDrafts<BatchDraft> = keptDrafts<BatchDraft>();

/** Name, route, due day and wanted numbers of a batch. */
export const BatchSheet = ({ id, now, onClose }: FactSheetProps<'batch'>) => {
  const shop = useShop();
  const { registers } = shop;
  const routes = factsOf(registers, 'route');
  const form = useForm({
    id,
    kept: keptBatches,
    start: batchDraftOf(now, registers),
    read: (draft) => readBatch(shop, { id, draft }),
    toSet: (batch) => ({
      ...{ register: 'batch', id },
      value: { ...batch, retired: now?.retired ?? false, ...(now?.plan && { plan: now.plan }) },
    }),
  });
  const { draft, change, errorAt } = form;
  const pieces = inWork(shop, id);
  return (
    <EditSheet
      title={now ? words.editBatch : words.addBatch}
      kind="batch"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          refusedBecause: pieces > 0 ? words.batchAway(pieces) : undefined,
          onChange: (retired) => form.put({ register: 'batch', id, value: { ...now, retired } }),
        }
      }
    >
      <NameField
        name={draft.name}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="batch-name"
      />
      <SelectField
        label={words.route}
        options={routes.map(({ id: value, fact }) => ({ value, label: fact.name }))}
        value={draft.route}
        nothing={words.chooseRoute}
        onChoose={(route) => change({ route })}
        error={errorAt('route')}
        testId="batch-route"
      />
      <Field
        label={words.due}
        kind="date"
        value={draft.due}
        onText={(due) => change({ due })}
        optional={words.optional}
        error={errorAt('due')}
        testId="batch-due"
      />
      <Field
        label={batchChanceWords.chance}
        hint={batchChanceWords.chanceHint(usualChance)}
        kind="number"
        unit="%"
        value={draft.chance}
        onText={(chance) => change({ chance })}
        optional={words.optional}
        error={errorAt('chance')}
        testId="batch-chance"
      />
      <Wanted {...form} />
    </EditSheet>
  );
};

const Wanted = ({ draft, change }: Form<BatchDraft>) => {
  const variants = variantsToWant(useShop().registers, draft);
  if (variants.length === 0) return null;
  return (
    <fieldset class="set-up-bill">
      <legend class="field-label">{words.wanted}</legend>
      <div class="set-up-pair">
        {variants.map(({ id, fact }) => {
          const typed = draft.wanted.get(id) ?? '';
          return (
            <Field
              key={id}
              label={fact.name}
              kind="number"
              value={typed}
              onText={(text) => change({ wanted: new Map([...draft.wanted, [id, text]]) })}
              error={wantedProblem(typed)}
              testId={`batch-wanted-${id}`}
            />
          );
        })}
      </div>
    </fieldset>
  );
};
