import './wood.css';
import { useEffect, useState } from 'preact/hooks';
import { type CatalogueWood, loadWoods } from '../../app/wood-catalogue.ts';
import { celsiusBounds, humidityBounds } from '../../domain/log/moisture-facts.ts';
import { latestAir } from '../../domain/rollup/lot-moisture.ts';
import { climateBounds, equilibriumMoistureContent } from '../../domain/wood/equilibrium-moisture.ts';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { Field } from '../../ui/field/field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { moistureWords as words } from '../../words/moisture-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { readTenths } from '../parts/form/tenths.ts';
import { AddLot } from './add-lot.tsx';
import { LotCard } from './lot-card.tsx';
import { useLotReadings } from './use-lot-readings.ts';
import { fitsOf, liveLots, lotVerdict, referenceOf } from './wood-view.ts';

/** Lots of blanks: how wet they are, what the room's air makes of them, and whether they are ready to fit. */
export const WoodPage = () => {
  const { registers } = useShop();
  const readings = useLotReadings();
  const woods = useWoods();
  const [typed, setTyped] = useState<{ readonly celsius?: string; readonly humidity?: string }>({});
  const [chosen, setChosen] = useState<number>();
  const known = latestAir([...(readings?.values() ?? [])]);
  const celsius = typed.celsius ?? (known ? String(known.celsius) : '');
  const humidity = typed.humidity ?? (known ? String(known.humidity) : '');
  const air = airOf(celsius, humidity);
  const fits = fitsOf(registers);
  const diameter = fits.find((fit) => fit.diameter === chosen)?.diameter ?? fits[0]?.diameter ?? null;
  const shrinkageOf = (reference: string | null) =>
    woods.find(({ id }) => id === reference)?.shrinkage_green_to_ovendry_pct ?? unknown;
  return (
    <main class="stores">
      <header class="stores-head">
        <div>
          <h1>{words.title}</h1>
          <p>{words.lead}</p>
        </div>
        <PressButton icon="back" label={words.toParts} onAct={() => goTo('stores')} testId="wood-back" />
      </header>
      <Panel title={words.air} lead={words.airLead} testId="air">
        <div class="wood-air">
          <Field
            label={words.celsius}
            kind="number"
            unit="°C"
            value={celsius}
            onText={(text) => setTyped({ ...typed, celsius: text })}
            error={air.badCelsius ? words.badCelsius : undefined}
            testId="air-celsius"
          />
          <Field
            label={words.humidity}
            kind="number"
            unit="%"
            value={humidity}
            onText={(text) => setTyped({ ...typed, humidity: text })}
            error={air.badHumidity ? words.badHumidity : undefined}
            testId="air-humidity"
          />
        </div>
        <p role="status" data-testid="air-comes-to">
          {air.equilibrium?.kind === 'known' ? words.comesTo(air.equilibrium.percent) : words.airNotSaid}
        </p>
      </Panel>
      {fits.length === 0 ? (
        <Panel title={words.fit}>
          <p>{words.noFits}</p>
          <PressButton label={words.toFits} onAct={() => goTo('set-up', 'parts')} testId="to-fits" />
        </Panel>
      ) : (
        <ChoiceRow
          label={words.fit}
          choices={fits.map((fit) => ({
            value: String(fit.diameter),
            label: words.fitLabel(fit.diameter),
            detail: fit.parts.join(', '),
          }))}
          value={String(diameter)}
          onChoose={(value) => setChosen(Number(value))}
          testId="fit"
        />
      )}
      <Panel title={words.lots} actions={<Means label={studyWords.means}>{words.means}</Means>} testId="lots">
        {liveLots(registers).length === 0 && <p>{words.noLots}</p>}
        <ul class="wood-lots">
          {liveLots(registers).map(({ id, fact }) => {
            const own = readings?.get(id) ?? [];
            const shrinkage = shrinkageOf(referenceOf(registers, fact));
            const verdict = lotVerdict({ reading: own.at(-1), air: air.equilibrium, diameter, shrinkage });
            return (
              <li key={id}>
                <LotCard
                  id={id}
                  fact={fact}
                  readings={own}
                  verdict={verdict}
                  diameter={diameter ?? 0}
                  air={air.tenths}
                />
              </li>
            );
          })}
        </ul>
        <AddLot />
      </Panel>
    </main>
  );
};

const unknown = { radial: null, tangential: null };

/** The reference woods; none until they are there, and none for good where their file cannot be had. */
function useWoods(): readonly CatalogueWood[] {
  const [woods, setWoods] = useState<readonly CatalogueWood[]>([]);
  useEffect(() => void loadWoods().then(setWoods, () => undefined), []);
  return woods;
}

/** The typed air: in tenths as it is kept, what wood comes to in it, and which field is wrong. */
function airOf(typedCelsius: string, typedHumidity: string) {
  const celsius = readTenths(typedCelsius, celsiusBounds);
  const humidity = readTenths(typedHumidity, humidityBounds);
  const tenths = celsius === null || humidity === null ? null : { celsius, humidity };
  const isOut = (value: number | null, { least, most }: { least: number; most: number }) =>
    value === null || value / 10 < least || value / 10 > most;
  return {
    tenths,
    equilibrium:
      tenths && equilibriumMoistureContent({ celsius: tenths.celsius / 10, humidity: tenths.humidity / 10 }),
    badCelsius: typedCelsius.trim() !== '' && isOut(celsius, climateBounds.celsius),
    badHumidity: typedHumidity.trim() !== '' && isOut(humidity, climateBounds.humidity),
  };
}
