import { useState } from 'preact/hooks';
import { systemClock } from '../../app/clock.ts';
import { isZoneName } from '../../domain/log/zone.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { SelectField } from '../../ui/field/select-field.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { NameField } from './name-field.tsx';
import { useSave } from './use-save.ts';

const hours = Array.from({ length: 13 }, (_, hour) => ({
  value: String(hour),
  label: `${String(hour).padStart(2, '0')}:00`,
}));

/** Name of the shop, its zone, and the hour at which its day begins. */
export const ShopPanel = () => {
  const fact = factOf(useShop().registers, { register: 'shop', id: 'shop' });
  const { save, errorAt } = useSave();
  const [name, setName] = useState(fact?.name ?? '');
  const [zone, setZone] = useState(fact?.zone ?? systemClock.zone());
  const [hour, setHour] = useState(String(fact?.dayStartHour ?? 4));
  const zoneKnown = isZoneName(zone.trim());
  const saveShop = () => {
    if (!zoneKnown) return;
    const value = { name: tidyText(name), zone: zone.trim(), dayStartHour: Number(hour) };
    void save({ register: 'shop', id: 'shop', value });
  };
  return (
    <Panel title={words.shop}>
      <NameField
        label={words.shopName}
        name={name}
        onName={setName}
        error={errorAt('name')}
        testId="shop-name"
      />
      <Field
        label={words.zone}
        value={zone}
        onText={setZone}
        error={zoneKnown ? undefined : words.badZone}
        testId="shop-zone"
      />
      <SelectField
        label={words.dayStart}
        options={hours}
        value={hour}
        onChoose={setHour}
        testId="shop-day-start"
      />
      <div>
        <PressButton label={words.save} closing onAct={saveShop} testId="shop-save" />
      </div>
    </Panel>
  );
};
