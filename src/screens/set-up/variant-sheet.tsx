import { useState } from 'preact/hooks';
import type { PartId, SpeciesId, VariantId } from '../../domain/log/ids.ts';
import { liveStages } from '../../domain/route/live-stages.ts';
import type { VariantFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factsOf, type Registers } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { nameOf } from '../../words/names.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { BillEdit } from './bill-edit.tsx';
import { EditSheet } from './edit-sheet.tsx';
import { priceText, readPrice } from './money.ts';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

export interface VariantSheetProps {
  readonly id: VariantId;
  readonly now: VariantFact | undefined;
  readonly onClose: () => void;
}

const noFerrule = '';

/** Wood, ferrule, name, parts and prices of a variant. */
export const VariantSheet = ({ id, now, onClose }: VariantSheetProps) => {
  const { registers } = useShop();
  const { save, errorAt } = useSave();
  const [typedName, setName] = useState<string | null>(now?.name ?? null);
  const [species, setSpecies] = useState<SpeciesId | undefined>(now?.species);
  const [ferrule, setFerrule] = useState<PartId | null>(now?.ferrule ?? null);
  const [bill, setBill] = useState<VariantFact['bill']>(now?.bill ?? []);
  const [first, setFirst] = useState(priceText(now?.firstPrice ?? null));
  const [second, setSecond] = useState(priceText(now?.secondPrice ?? null));
  const [woodMissing, setWoodMissing] = useState(false);
  const woods = factsOf(registers, 'species').filter(
    ({ id: wood, fact }) => !fact.retired || wood === species,
  );
  const ferrules = factsOf(registers, 'part').filter(({ fact }) => fact.sort === 'ferrule' && !fact.retired);
  const name = typedName ?? proposedName(registers, { species, ferrule });
  const prices = [readPrice(first), readPrice(second)] as const;

  const chooseFerrule = (value: string) => {
    const chosen = ferrules.find((each) => each.id === value)?.id ?? null;
    setBill(withFerrule(registers, { bill, from: ferrule, to: chosen }));
    setFerrule(chosen);
  };
  const saveAs = async (retired: boolean) => {
    setWoodMissing(!species);
    const [firstPrice, secondPrice] = prices;
    if (!species || firstPrice === undefined || secondPrice === undefined) return;
    const value = { name: tidyText(name), species, ferrule, bill, firstPrice, secondPrice, retired };
    if (await save({ register: 'variant', id, value })) onClose();
  };
  const retired = now?.retired ?? false;
  return (
    <EditSheet
      title={now ? words.variants : words.addVariant}
      kind="variant"
      onClose={onClose}
      onSave={() => void saveAs(retired)}
      retired={now && { is: retired, onChange: () => void saveAs(!retired) }}
      error={errorAt('other')}
    >
      <SelectField
        label={words.wood}
        options={woods.map(({ id: value, fact }) => ({ value, label: fact.name }))}
        value={species}
        nothing={words.chooseWood}
        onChoose={setSpecies}
        error={errorAt('wood') ?? (woodMissing && !species ? words.chooseWood : undefined)}
        testId="variant-wood"
      />
      <SelectField
        label={words.ferrule}
        options={[
          { value: noFerrule, label: words.noFerrule },
          ...ferrules.map(({ id: value, fact }) => ({ value: `${value}`, label: fact.name })),
        ]}
        value={`${ferrule ?? noFerrule}`}
        onChoose={chooseFerrule}
        testId="variant-ferrule"
      />
      <NameField name={name} onName={setName} error={errorAt('name')} testId="variant-name" />
      <Field
        label={words.firstPrice}
        kind="number"
        value={first}
        onText={setFirst}
        optional={words.optional}
        error={prices[0] === undefined ? words.badPrice : undefined}
        testId="variant-first-price"
      />
      <Field
        label={words.secondPrice}
        kind="number"
        value={second}
        onText={setSecond}
        optional={words.optional}
        error={prices[1] === undefined ? words.badPrice : undefined}
        testId="variant-second-price"
      />
      <BillEdit bill={bill} onBill={setBill} />
    </EditSheet>
  );
};

function proposedName(
  registers: Registers,
  { species, ferrule }: { species: SpeciesId | undefined; ferrule: PartId | null },
): string {
  if (!species) return '';
  const metal = ferrule ? nameOf(registers, { register: 'part', id: ferrule }) : '';
  return words.proposedName(nameOf(registers, { register: 'species', id: species }), metal);
}

/** The ferrule is a part of the bill like any other: fitted at the glue-up, or at the first stage of the route. */
function withFerrule(
  registers: Registers,
  { bill, from, to }: { bill: VariantFact['bill']; from: PartId | null; to: PartId | null },
): VariantFact['bill'] {
  const others = bill.filter(({ part }) => part !== from);
  const stages = liveStages(registers);
  const stage =
    bill.find(({ part }) => part === from)?.stage ?? stages.find((id) => id === 'glue-up') ?? stages[0];
  return to && stage ? [...others, { part: to, each: 1, stage }] : others;
}
