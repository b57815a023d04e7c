import { useEffect, useState } from 'preact/hooks';
import { type CatalogueWood, loadWoods, lookOf } from '../../app/wood-catalogue.ts';
import type { SpeciesFact } from '../../domain/set-up/facts.ts';
import { Field } from '../../ui/field/field.tsx';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

export interface WoodCatalogueProps {
  readonly onClose: () => void;
  readonly onOwn: () => void;
  readonly onChoose: (wood: SpeciesFact) => void;
}

/** A wood from the reference data, or one of the maker's own. */
export const WoodCatalogue = ({ onClose, onOwn, onChoose }: WoodCatalogueProps) => {
  const [woods, setWoods] = useState<readonly CatalogueWood[]>([]);
  const [search, setSearch] = useState('');
  useEffect(() => void loadWoods().then(setWoods), []);
  const wanted = search.trim().toLowerCase();
  const found = woods.filter(({ common_name, scientific_name }) =>
    `${common_name} ${scientific_name ?? ''}`.toLowerCase().includes(wanted),
  );
  return (
    <Sheet
      title={words.addWood}
      onClose={onClose}
      closeLabel={words.close}
      shape="whole"
      testId="wood-catalogue"
    >
      <div class="set-up-form">
        <PressButton tone="go" icon="plus" label={words.ownWood} onAct={onOwn} testId="wood-own" />
        <Field
          label={words.searchWoods}
          kind="search"
          value={search}
          onText={setSearch}
          hint={words.fromList}
        />
        <ul class="set-up-rack">
          {found.map((wood) => (
            <li key={wood.id}>
              <PressButton
                label={capital(wood.common_name)}
                detail={<Look wood={wood} />}
                onAct={() => onChoose(woodFact(wood))}
                testId={`catalogue-${wood.id}`}
              />
            </li>
          ))}
        </ul>
      </div>
    </Sheet>
  );
};

const Look = ({ wood }: { wood: CatalogueWood }) => {
  const { grain, light, dark } = lookOf(wood);
  return (
    <span class="wood-name">
      <GrainSwatch pattern={grain} tones={{ ground: light, line: dark }} size="small" />
      <i>{wood.scientific_name}</i>
    </span>
  );
};

/** The fact that a wood of the reference data begins as, its caution in plain words with the source. */
export function woodFact(wood: CatalogueWood): SpeciesFact {
  const caution = wood.hazard
    ? `${words.hazard(wood.hazard.effect.join(', '), wood.hazard.sites.join(', '))} ${words.hazardRule} (${sourceOf(wood.hazard.source)})`
    : words.noHazard;
  return { name: capital(wood.common_name), ...lookOf(wood), reference: wood.id, caution, retired: false };
}

/** The first sentence of a source: enough to find it by. */
function sourceOf(source: string): string {
  return source.split(', as ')[0] ?? source;
}

function capital(name: string): string {
  return name.charAt(0).toUpperCase() + name.slice(1);
}
