import { useState } from 'preact/hooks';
import { readId, type VariantId, variantId } from '../../domain/log/ids.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { FactList } from './fact-list.tsx';
import { VariantSheet } from './variant-sheet.tsx';

/** What a customer buys. */
export const Variants = () => {
  const session = useSession();
  const [open, setOpen] = useState<VariantId | null>(null);
  const entries = factsOf(useShop().registers, 'variant');
  return (
    <>
      <FactList
        title={words.variants}
        lead={words.variantsLead}
        entries={entries}
        detail={({ fact }) => <WoodName species={fact.species} />}
        addLabel={words.addVariant}
        onAdd={() => setOpen(readId(variantId, session.newId()))}
        onPick={({ id }) => setOpen(id)}
        kind="variant"
      />
      {open && (
        <VariantSheet
          key={open}
          id={open}
          now={entries.find(({ id }) => id === open)?.fact}
          onClose={() => setOpen(null)}
        />
      )}
    </>
  );
};
