import { useMemo, useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import { labelReading, signsToBear } from '../../../domain/label/label-reading.ts';
import {
  labelsPerPage,
  type PlacedLabel,
  pageInMm,
  pagesOfLabels,
} from '../../../domain/label/label-size.ts';
import { labelSizes } from '../../../domain/label/label-sizes.ts';
import type { LabelSizeId } from '../../../domain/log/ids.ts';
import type { Entry } from '../../../domain/shop/registers.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { SelectField } from '../../../ui/field/select-field.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { readingWords, labelWords as words } from '../../../words/label-words.ts';
import { numberProblemWords } from '../../../words/problem-words.ts';
import { goTo } from '../../parts/address.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { CountField } from '../../parts/count-field.tsx';
import { PrintButton } from '../../parts/print/print-button.tsx';
import { PrintRoot } from '../../parts/print/print-root.tsx';
import { LabelSheet } from './label-sheet.tsx';
import { type TrayLabel, trayLabel } from './label-view.ts';
import { type TextMeasures, useTextMeasures } from './text-measures.ts';

/** The size that was chosen last in this window. */
let lastSize: LabelSizeId | undefined;

/** Labels of the chosen trays: their size, where a begun sheet goes on, and the pages as they will be printed. */
export const LabelsToPrint = ({ trays }: { trays: readonly TrayRecord[] }) => {
  const shop = useShop();
  const sizes = labelSizes(shop.registers).filter(({ fact }) => !fact.retired);
  const [id, setId] = useState(lastSize);
  const [typed, setTyped] = useState('1');
  const measures = useTextMeasures();
  const size = sizes.find((each) => each.id === id) ?? sizes[0];
  if (!size) return <NoSize />;
  const perPage = labelsPerPage(size.fact);
  const first = readWholeNumber(typed, { least: 1, most: perPage });
  const reading = readingWords(labelReading(size.fact, signsToBear(trays)));
  return (
    <>
      <Panel
        title={words.labels}
        actions={<PressButton label={words.setUpSizes} onAct={() => goTo('set-up', 'labels')} />}
      >
        <SelectField
          label={words.size}
          options={sizes.map((each) => ({ value: each.id, label: each.fact.name }))}
          value={size.id}
          onChoose={(next) => {
            lastSize = next;
            setId(next);
          }}
          testId="print-size"
        />
        {perPage > 1 && (
          <>
            <p>{words.firstFreeHint(perPage)}</p>
            <CountField
              label={words.firstFree}
              typed={typed}
              onTyped={setTyped}
              bounds={{ least: 1, most: perPage }}
              error={first.ok ? undefined : numberProblemWords(first.problem)}
              fewer={words.fewer}
              more={words.more}
              testId="print-first"
            />
          </>
        )}
        {reading !== null && <Notice tone="warn" title={reading} testId="print-small" />}
      </Panel>
      {measures && (
        <Pages
          trays={trays}
          size={size}
          firstFree={perPage > 1 && first.ok ? first.value - 1 : 0}
          refused={perPage > 1 && !first.ok}
          measures={measures}
        />
      )}
    </>
  );
};

const NoSize = () => (
  <Panel title={words.labels}>
    <PressButton tone="go" label={words.addSize} onAct={() => goTo('set-up', 'labels')} />
  </Panel>
);

interface PagesProps {
  readonly trays: readonly TrayRecord[];
  readonly size: Entry<'label-size'>;
  readonly firstFree: number;
  /** The first free label is not understood: nothing is printed on a guess. */
  readonly refused: boolean;
  readonly measures: TextMeasures;
}

const Pages = ({ trays, size, firstFree, refused, measures }: PagesProps) => {
  // The shop behind the view changes in place: the view is another one when it has.
  const view = useSession().view.value;
  const pages = useMemo(
    () =>
      pagesOfLabels(
        trays.map((tray) => trayLabel(view.shop, tray)),
        { size: size.fact, firstFree },
      ),
    [view, trays, size, firstFree],
  );
  const printed = useMemo(
    () =>
      pages.map((labels) => (
        <div class="print-page" key={labels[0]?.thing.tray}>
          <LabelSheet size={size.fact} labels={labels} measures={measures} />
        </div>
      )),
    [pages, size, measures],
  );
  const refusedBecause = pages.length === 0 ? words.chooseTrays : refused ? words.whichFree : undefined;
  return (
    <Panel
      title={words.preview}
      lead={words.pages(pages.length)}
      actions={<PrintButton refusedBecause={refusedBecause} />}
    >
      <p>{words.atFullSize}</p>
      {pages.length > 0 && <Preview pages={pages} size={size} measures={measures} />}
      {refusedBecause === undefined && (
        <PrintRoot page={pageInMm(size.fact)} margin={0}>
          {printed}
        </PrintRoot>
      )}
    </Panel>
  );
};

interface PreviewProps {
  readonly pages: readonly (readonly PlacedLabel<TrayLabel>[])[];
  readonly size: Entry<'label-size'>;
  readonly measures: TextMeasures;
}

/** One page at a time, with the labels' edges. */
const Preview = ({ pages, size, measures }: PreviewProps) => {
  const [at, setAt] = useState(0);
  const page = Math.min(at, pages.length - 1);
  return (
    <figure class="print-preview">
      <LabelSheet size={size.fact} labels={pages[page] ?? []} measures={measures} outlines />
      {pages.length > 1 && (
        <figcaption class="trays-acts">
          <PressButton
            icon="up"
            label={words.before}
            disabledReason={page === 0 ? words.page(page + 1, pages.length) : undefined}
            onAct={() => setAt(page - 1)}
          />
          <PressButton
            icon="down"
            label={words.after}
            detail={words.page(page + 1, pages.length)}
            disabledReason={page === pages.length - 1 ? words.page(page + 1, pages.length) : undefined}
            onAct={() => setAt(page + 1)}
          />
        </figcaption>
      )}
    </figure>
  );
};
