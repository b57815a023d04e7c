import { noBoxTexts } from '../../domain/set-up/box-texts.ts';
import { factOf, factsOf } from '../../domain/shop/registers.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { boxWords } from '../../words/box-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { EditSheet } from '../parts/form/edit-sheet.tsx';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { type Form, useForm } from '../parts/form/use-form.ts';
import { BillEdit } from './bill-edit.tsx';
import { boxOf } from './box-draft.ts';
import { BoxFields } from './box-fields.tsx';
import type { FactSheetProps } from './fact-page.tsx';
import { hasFerrule } from './set-up-view.ts';
import {
  nameInForm,
  newVariantDraft,
  readVariant,
  type VariantDraft,
  variantDraftOf,
  withFerrule,
} from './variant-draft.ts';

export const keptVariants: KeptDrafts<VariantDraft> = keptDrafts<VariantDraft>();

type VariantForm = Form<VariantDraft>;

/** Wood, ferrule, name, prices and parts of a variant. */
export const VariantSheet = ({ id, now, onClose }: FactSheetProps<'variant'>) => {
  const { registers } = useShop();
  const form = useForm({
    id,
    kept: keptVariants,
    start: now ? variantDraftOf(now) : newVariantDraft(registers),
    read: (draft) => readVariant(registers, draft),
    toSet: (variant) => ({
      register: 'variant',
      id,
      value: { ...variant, retired: now?.retired ?? false },
    }),
  });
  const { draft, change, errorAt } = form;
  return (
    <EditSheet
      title={now ? words.editVariant : words.addVariant}
      kind="variant"
      form={form}
      onSave={form.save}
      onClose={onClose}
      away={
        now && {
          is: now.retired,
          onChange: (retired) => form.put({ register: 'variant', id, value: { ...now, retired } }),
        }
      }
    >
      <WoodChoice {...form} />
      <FerruleChoice {...form} />
      <NameField
        name={nameInForm(registers, draft)}
        onName={(name) => change({ name })}
        error={errorAt('name')}
        testId="variant-name"
      />
      <div class="set-up-pair">
        <PriceField form={form} price="firstPrice" testId="variant-first-price" />
        <PriceField form={form} price="secondPrice" testId="variant-second-price" />
      </div>
      <BillEdit bill={draft.bill} ferrule={draft.ferrule} onBill={(bill) => change({ bill })} />
      <BoxOf {...form} />
    </EditSheet>
  );
};

const WoodChoice = ({ draft, change, errorAt }: VariantForm) => {
  const { registers } = useShop();
  const woods = factsOf(registers, 'species').filter(({ id, fact }) => !fact.retired || id === draft.species);
  if (woods.length === 0) return <Missing text={words.noWoods} label={words.addWood} section="woods" />;
  return (
    <SelectField
      label={words.wood}
      options={woods.map(({ id, fact }) => ({ value: id, label: fact.name }))}
      value={draft.species}
      nothing={words.chooseWood}
      onChoose={(species) => change({ species })}
      error={errorAt('species')}
      testId="variant-wood"
    />
  );
};

const noFerrule = '';

const FerruleChoice = ({ draft, change }: VariantForm) => {
  const { registers } = useShop();
  const ferrules = factsOf(registers, 'part').filter(
    ({ id, fact }) => id === draft.ferrule || (fact.sort === 'ferrule' && !fact.retired),
  );
  const choose = (value: string) =>
    change(withFerrule(registers, draft, ferrules.find(({ id }) => id === value)?.id ?? null));
  return (
    <>
      <SelectField
        label={words.ferrule}
        options={[
          { value: noFerrule, label: words.noFerrule },
          ...ferrules.map(({ id, fact }) => ({ value: `${id}`, label: fact.name })),
        ]}
        value={`${draft.ferrule ?? noFerrule}`}
        onChoose={choose}
        testId="variant-ferrule"
      />
      {!hasFerrule(registers) && <Missing text={words.noFerrules} label={words.addPart} section="parts" />}
    </>
  );
};

/** What goes into the box with its pieces, where that is not as with every variant. */
const BoxOf = ({ draft, change, errorAt }: VariantForm) => {
  const shop = factOf(useShop().registers, { register: 'shop', id: 'shop' });
  return (
    <Disclosure
      summary={boxWords.setUpTitle}
      open={boxOf(draft).box !== undefined || boxTextFields.some((field) => errorAt(field) !== undefined)}
      testId="variant-box"
    >
      <p>{boxWords.variantLead}</p>
      <ChoiceRow
        label={boxWords.printed}
        choices={[
          { value: 'yes', label: boxWords.isPrinted },
          { value: 'no', label: boxWords.isNotPrinted },
        ]}
        value={draft.printed}
        onChoose={(printed) => change({ printed })}
        testId="variant-box-printed"
      />
      {draft.printed === 'yes' && (
        <BoxFields
          texts={draft}
          onTexts={change}
          errorAt={errorAt}
          ofShop={shop?.box ?? noBoxTexts}
          testId="variant-box"
        />
      )}
    </Disclosure>
  );
};

const boxTextFields = ['finish', 'care', 'caution'] as const;

interface PriceFieldProps {
  readonly form: VariantForm;
  readonly price: 'firstPrice' | 'secondPrice';
  readonly testId: string;
}

const PriceField = ({ form, price, testId }: PriceFieldProps) => (
  <Field
    label={words[price]}
    kind="number"
    value={form.draft[price]}
    onText={(text) => form.change({ [price]: text })}
    optional={words.optional}
    error={form.errorAt(price)}
    testId={testId}
  />
);

/** Something that a variant is made of and the shop does not have yet, with the way there. */
const Missing = ({ text, label, section }: { text: string; label: string; section: 'woods' | 'parts' }) => (
  <Notice
    tone="info"
    title={text}
    actions={<PressButton label={label} onAct={() => goTo('set-up', section)} testId={`to-${section}`} />}
  />
);
