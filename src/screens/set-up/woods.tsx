import { useState } from 'preact/hooks';
import { readId, type SpeciesId, speciesId } from '../../domain/log/ids.ts';
import type { SpeciesFact } from '../../domain/set-up/facts.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { FactList } from './fact-list.tsx';
import { WoodCatalogue } from './wood-catalogue.tsx';
import { blankWood, WoodSheet } from './wood-sheet.tsx';

type Open =
  | { readonly kind: 'choosing' }
  | { readonly kind: 'editing'; readonly id: SpeciesId; readonly wood: SpeciesFact; readonly isNew: boolean };

/** The woods of the shop. */
export const Woods = () => {
  const session = useSession();
  const [open, setOpen] = useState<Open | null>(null);
  const entries = factsOf(useShop().registers, 'species');
  const close = () => setOpen(null);
  const editNew = (wood: SpeciesFact) => {
    const id = readId(speciesId, session.newId());
    if (id) setOpen({ kind: 'editing', id, wood, isNew: true });
  };
  return (
    <>
      <FactList
        title={words.woods}
        lead={words.woodsLead}
        entries={entries}
        detail={({ id }) => <WoodName species={id} />}
        addLabel={words.addWood}
        onAdd={() => setOpen({ kind: 'choosing' })}
        onPick={({ id, fact }) => setOpen({ kind: 'editing', id, wood: fact, isNew: false })}
        kind="wood"
      />
      {open?.kind === 'choosing' && (
        <WoodCatalogue onClose={close} onOwn={() => editNew(blankWood)} onChoose={editNew} />
      )}
      {open?.kind === 'editing' && <WoodSheet key={open.id} {...open} onClose={close} />}
    </>
  );
};
