import { useState } from 'preact/hooks';
import { readWholeNumber } from '../../domain/command/whole-number.ts';
import { type BatchId, type RouteId, readId, shopDayText, type VariantId } from '../../domain/log/ids.ts';
import type { BatchFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { numberProblemWords } from '../../words/problem-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from './edit-sheet.tsx';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

export interface BatchSheetProps {
  readonly id: BatchId;
  readonly now: BatchFact | undefined;
  readonly onClose: () => void;
}

const goodBounds = { least: 0, most: 99_999 };

/** Name, route, wanted numbers and due day of a batch. */
export const BatchSheet = ({ id, now, onClose }: BatchSheetProps) => {
  const { registers } = useShop();
  const { save, errorAt } = useSave();
  const routes = factsOf(registers, 'route');
  const variants = factsOf(registers, 'variant').filter(({ fact }) => !fact.retired);
  const [name, setName] = useState(now?.name ?? '');
  const [route, setRoute] = useState<RouteId | undefined>(now?.route ?? routes[0]?.id);
  const [due, setDue] = useState<string>(now?.due ?? '');
  const [wanted, setWanted] = useState<ReadonlyMap<VariantId, string>>(
    new Map(now?.wanted.map(({ variant, good }) => [variant, String(good)])),
  );
  const typedFor = (variant: VariantId) => wanted.get(variant) ?? '';
  const read = (variant: VariantId) => readWholeNumber(typedFor(variant) || '0', goodBounds);
  const saveAs = async (retired: boolean) => {
    const counts = variants.map(({ id: variant }) => ({ variant, read: read(variant) }));
    if (!route || counts.some((each) => !each.read.ok)) return;
    const value: BatchFact = {
      name: tidyText(name),
      route,
      wanted: counts.flatMap(({ variant, read: count }) =>
        count.ok && count.value > 0 ? [{ variant, good: count.value }] : [],
      ),
      due: readId(shopDayText, due),
      retired,
    };
    if (await save({ register: 'batch', id, value })) onClose();
  };
  const retired = now?.retired ?? false;
  return (
    <EditSheet
      title={now ? words.batches : words.addBatch}
      kind="batch"
      onClose={onClose}
      onSave={() => void saveAs(retired)}
      retired={now && { is: retired, onChange: () => void saveAs(!retired) }}
    >
      <NameField name={name} onName={setName} error={errorAt('name')} testId="batch-name" />
      <SelectField
        label={words.route}
        options={routes.map(({ id: value, fact }) => ({ value, label: fact.name }))}
        value={route}
        onChoose={setRoute}
      />
      <Field label={words.due} kind="date" value={due} onText={setDue} optional={words.optional} />
      <fieldset class="set-up-bill">
        <legend class="field-label">{words.wanted}</legend>
        {variants.map(({ id: variant, fact }) => {
          const count = read(variant);
          return (
            <Field
              key={variant}
              label={fact.name}
              kind="number"
              value={typedFor(variant)}
              onText={(text) => setWanted(new Map([...wanted, [variant, text]]))}
              error={count.ok ? undefined : numberProblemWords(count.problem)}
            />
          );
        })}
      </fieldset>
    </EditSheet>
  );
};
