import { useMemo } from 'preact/hooks';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { Panel } from '../../../ui/panel/panel.tsx';
import { labelWords as words } from '../../../words/label-words.ts';
import { useSession } from '../../parts/app-context.ts';
import { PaperChoice, papers, usePaper } from '../../parts/print/paper-choice.tsx';
import { PrintButton } from '../../parts/print/print-button.tsx';
import { PrintRoot } from '../../parts/print/print-root.tsx';
import { useNow } from '../../parts/use-now.ts';
import { cardView } from './card-view.ts';
import { RouteCard } from './route-card.tsx';

const margin = 10;

/** Route cards of the chosen trays, each on a page of its own. */
export const CardsToPrint = ({ trays }: { trays: readonly TrayRecord[] }) => {
  const session = useSession();
  // The shop behind the view changes in place: the view is another one when it has.
  const view = session.view.value;
  const now = useNow();
  const [paper, setPaper] = usePaper();
  const cards = useMemo(
    () => trays.map((tray) => cardView(view.shop, { tray, now, zone: session.zone() })),
    [view, session, trays, now],
  );
  const printed = useMemo(
    () => cards.map((card) => <RouteCard key={card.label.tray} card={card} />),
    [cards],
  );
  const [first] = cards;
  return (
    <Panel
      title={words.preview}
      lead={words.pages(cards.length)}
      actions={<PrintButton refusedBecause={cards.length === 0 ? words.chooseTrays : undefined} />}
    >
      <PaperChoice paper={paper} onChoose={setPaper} />
      {first && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable with the keyboard
        <figure class="print-preview card-preview" tabIndex={0}>
          <RouteCard card={first} />
        </figure>
      )}
      {cards.length > 0 && (
        <PrintRoot page={papers[paper]} margin={margin}>
          {printed}
        </PrintRoot>
      )}
    </Panel>
  );
};
