import '../parts/form/form.css';
import { useEffect, useState } from 'preact/hooks';
import { type CatalogueWood, loadWoods, lookOf } from '../../app/wood-catalogue.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { Field } from '../../ui/field/field.tsx';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { Sheet } from '../../ui/sheet/sheet.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { findWoods, isInShop, ownWood, type WoodDraft, woodOfCatalogue } from './wood-draft.ts';

export interface WoodCatalogueProps {
  readonly onClose: () => void;
  readonly onChoose: (wood: WoodDraft) => void;
}

/** A wood from the reference data, or one of the maker's own. */
export const WoodCatalogue = ({ onClose, onChoose }: WoodCatalogueProps) => {
  const [woods, setWoods] = useState<readonly CatalogueWood[] | null>(null);
  const [search, setSearch] = useState('');
  useEffect(() => void loadWoods().then(setWoods), []);
  const own = factsOf(useShop().registers, 'species').map(({ fact }) => fact);
  const found = findWoods(woods ?? [], search);
  return (
    <Sheet
      title={words.addWood}
      onClose={onClose}
      closeLabel={words.close}
      shape="whole"
      testId="wood-catalogue"
    >
      <div class="form-fields">
        <div class="set-up-search">
          <Field
            label={words.searchWoods}
            kind="search"
            value={search}
            onText={setSearch}
            hint={words.fromList}
            testId="wood-search"
          />
          <PressButton
            icon="plus"
            label={words.ownWood}
            onAct={() => onChoose({ ...ownWood, name: search.trim() })}
            testId="wood-own"
          />
        </div>
        <p role="status">{woods && found.length === 0 ? words.noWoodFound : ''}</p>
        <ul class="set-up-rack">
          {found.map((wood) => (
            <li key={wood.id}>
              <PressButton
                label={woodOfCatalogue(wood).name}
                detail={<Look wood={wood} />}
                disabledReason={isInShop(wood, own) ? words.woodIsThere : undefined}
                onAct={() => onChoose(woodOfCatalogue(wood))}
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
