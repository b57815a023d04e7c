import { useMemo, useState } from 'preact/hooks';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { labelWords as words } from '../../../words/label-words.ts';
import { useSession } from '../../parts/app-context.ts';
import { useNow } from '../../parts/use-now.ts';
import { cardView } from './card-view.ts';
import { PrintButton } from './print-button.tsx';
import { PrintRoot } from './print-root.tsx';
import { RouteCard } from './route-card.tsx';

/** In mm. */
const papers = { a4: { width: 210, height: 297 }, letter: { width: 215.9, height: 279.4 } } as const;
type Paper = keyof typeof papers;
const margin = 10;

let lastPaper: Paper = 'a4';

/** Route cards of the chosen trays, each on a page of its own. */
export const CardsToPrint = ({ trays }: { trays: readonly TrayRecord[] }) => {
  const session = useSession();
  // The shop behind the view changes in place: the view is another one when it has.
  const view = session.view.value;
  const now = useNow();
  const [paper, setPaper] = useState(lastPaper);
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
      <ChoiceRow
        label={words.paper}
        choices={[
          { value: 'a4', label: words.a4 },
          { value: 'letter', label: words.letter },
        ]}
        value={paper}
        onChoose={(next) => {
          lastPaper = next;
          setPaper(next);
        }}
        testId="print-paper"
      />
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
