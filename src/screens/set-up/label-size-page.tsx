import { labelReading, signsToBear } from '../../domain/label/label-reading.ts';
import { labelSizes } from '../../domain/label/label-sizes.ts';
import { labelSizeId, readId } from '../../domain/log/ids.ts';
import { namesOfData } from '../../words/data-words.ts';
import { readingWords, sizeWords, labelWords as words } from '../../words/label-words.ts';
import { useShop } from '../parts/app-context.ts';
import { BoxPanel } from './box-panel.tsx';
import { FactPage } from './fact-page.tsx';
import { keptLabelSizes, LabelSizeSheet } from './label-size-sheet.tsx';

/** Sizes of labels: those of the shop, and the common ones to start from; and what the sheet for the box says. */
export const LabelSizePage = () => {
  const { registers, trays } = useShop();
  const signs = signsToBear(trays.values());
  return (
    <>
      <FactPage
        register="label-size"
        kind="label-size"
        lead={words.sizesLead}
        addLabel={words.addSize}
        kept={keptLabelSizes}
        toId={(fresh) => readId(labelSizeId, fresh)}
        sheet={LabelSizeSheet}
        entries={labelSizes(registers, namesOfData.labelSize)}
        detail={({ fact }) =>
          `${sizeWords(fact)}. ${readingWords(labelReading(fact, signs)) ?? words.readable}`
        }
      />
      <BoxPanel />
    </>
  );
};
