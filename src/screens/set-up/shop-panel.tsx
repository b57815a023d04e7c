import { systemClock } from '../../app/clock.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { peopleWords } from '../../words/people-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { NameField } from '../parts/form/name-field.tsx';
import { useForm } from '../parts/form/use-form.ts';
import { SaveForm } from './save-form.tsx';
import { dayStartHours, readShop, type ShopDraft, shopDraftOf, zonesToOffer } from './shop-draft.ts';

const kept = keptDrafts<ShopDraft>();

/** Name of the shop, its zone, and the hour at which its day begins. */
export const ShopPanel = () => {
  const fact = factOf(useShop().registers, { register: 'shop', id: 'shop' });
  const here = systemClock.zone();
  const form = useForm({
    id: 'shop',
    kept,
    start: shopDraftOf(fact, here),
    read: readShop,
    // What is said elsewhere of the shop stays: the warmth stands on the curing board.
    toSet: (value) => ({ register: 'shop', id: 'shop', value: { ...fact, ...value } }),
  });
  const { draft, change } = form;
  const zones = zonesToOffer(Intl.supportedValuesOf('timeZone'), { chosen: draft.zone, here });
  return (
    <Panel title={words.shop} lead={words.shopLead}>
      <SaveForm form={form} kind="shop">
        <NameField
          label={words.shopName}
          name={draft.name}
          onName={(name) => change({ name })}
          error={form.errorAt('name')}
          testId="shop-name"
        />
        <SelectField
          label={words.zone}
          hint={words.zoneHint}
          options={zones.map((value) => ({ value, label: value.replaceAll('_', ' ') }))}
          value={draft.zone}
          onChoose={(zone) => change({ zone })}
          testId="shop-zone"
        />
        <SelectField
          label={words.dayStart}
          hint={words.dayStartHint}
          options={dayStartHours}
          value={draft.hour}
          onChoose={(hour) => change({ hour })}
          testId="shop-day-start"
        />
        <Field
          label={peopleWords.shopHourCost}
          hint={peopleWords.shopHourCostHint}
          optional={words.optional}
          kind="number"
          value={draft.hourCost}
          onText={(hourCost) => change({ hourCost })}
          error={form.errorAt('hourCost')}
          testId="shop-hour-cost"
        />
      </SaveForm>
    </Panel>
  );
};
