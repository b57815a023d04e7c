import { useState } from 'preact/hooks';
import { readId, type SpeciesId, speciesId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { GrainSwatch } from '../../ui/flow/grain-swatch.tsx';
import { grainWords } from '../../words/grain-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { FactList } from './fact-list.tsx';
import { WoodCatalogue } from './wood-catalogue.tsx';
import { ownWood, type WoodDraft } from './wood-draft.ts';
import { keptWoods, WoodSheet } from './wood-sheet.tsx';

type Open =
  | { readonly kind: 'choosing' }
  | { readonly kind: 'editing'; readonly id: SpeciesId; readonly begin: WoodDraft };

/** The woods of the shop; a new one is chosen from the reference data or written down by hand. */
export const Woods = () => {
  const session = useSession();
  const [open, setOpen] = useState<Open | null>(null);
  const entries = factsOf(useShop().registers, 'species');
  const drafts = keptWoods(session);
  const close = () => setOpen(null);
  const edit = (text: string, begin: WoodDraft = ownWood) => {
    const id = readId(speciesId, text);
    if (id) setOpen({ kind: 'editing', id, begin });
  };
  const add = () => {
    const begun = drafts.ids().find((id) => !entries.some((entry) => entry.id === id));
    if (begun) edit(begun);
    else setOpen({ kind: 'choosing' });
  };
  return (
    <>
      <FactList
        lead={words.woodsLead}
        entries={entries}
        detail={({ fact }) => (
          <span class="wood-name">
            <GrainSwatch pattern={fact.grain} tones={{ ground: fact.light, line: fact.dark }} />
            {grainWords[fact.grain]}
          </span>
        )}
        isDraft={(id) => drafts.has(id)}
        addLabel={words.addWood}
        onAdd={add}
        onPick={({ id }) => edit(id)}
        kind="wood"
      />
      {open?.kind === 'choosing' && (
        <WoodCatalogue onClose={close} onChoose={(wood) => edit(session.newId(), wood)} />
      )}
      {open?.kind === 'editing' && (
        <WoodSheet
          key={open.id}
          id={open.id}
          now={entries.find(({ id }) => id === open.id)?.fact}
          begin={open.begin}
          onClose={close}
        />
      )}
    </>
  );
};
