import { readId, variantId } from '../../domain/log/ids.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { FactPage } from './fact-page.tsx';
import { keptVariants, VariantSheet } from './variant-sheet.tsx';

/** What a customer buys. */
export const Variants = () => (
  <FactPage
    register="variant"
    kind="variant"
    lead={words.variantsLead}
    addLabel={words.addVariant}
    kept={keptVariants}
    toId={(fresh) => readId(variantId, fresh)}
    sheet={VariantSheet}
    detail={({ fact }) => <WoodName species={fact.species} />}
  />
);
