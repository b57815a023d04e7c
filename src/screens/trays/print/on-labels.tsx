import type { ComponentChildren } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import {
  labelsPerPage,
  type PlacedLabel,
  pageInMm,
  pagesOfLabels,
} from '../../../domain/label/label-size.ts';
import { labelSizes } from '../../../domain/label/label-sizes.ts';
import type { LabelSizeId } from '../../../domain/log/ids.ts';
import type { LabelSizeFact } from '../../../domain/set-up/facts.ts';
import type { Entry } from '../../../domain/shop/registers.ts';
import { SelectField } from '../../../ui/field/select-field.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { namesOfData } from '../../../words/data-words.ts';
import { labelWords as words } from '../../../words/label-words.ts';
import { numberProblemWords } from '../../../words/problem-words.ts';
import { goTo } from '../../parts/address.ts';
import { useShop } from '../../parts/app-context.ts';
import { CountField } from '../../parts/count-field.tsx';
import { PrintButton } from '../../parts/print/print-button.tsx';
import { PrintRoot } from '../../parts/print/print-root.tsx';
import { type LabelFace, LabelSheet, type LabelThing } from './label-sheet.tsx';

/** The size that was chosen last in this window for labels of a sort. */
export interface KeptSize {
  id: LabelSizeId | undefined;
}

/** What is to be said of a size, and why nothing may be printed on it. */
interface SizeJudgement {
  readonly notice: ComponentChildren;
  readonly refused?: string | undefined;
}

export interface OnLabelsProps<Thing extends LabelThing> {
  readonly title: string;
  readonly kept: KeptSize;
  /** The same ones as long as nothing has changed. */
  readonly things: readonly Thing[];
  /** null until the faces of the type are there. */
  readonly face: LabelFace<Thing> | null;
  readonly judge: (size: LabelSizeFact) => SizeJudgement;
  /** What else is to be chosen. */
  readonly children?: ComponentChildren;
}

/** Labels of any things: their size, where a begun sheet goes on, and the pages as they will be printed. */
export const OnLabels = <Thing extends LabelThing>(props: OnLabelsProps<Thing>) => {
  const { title, kept, things, face, judge, children } = props;
  const sizes = labelSizes(useShop().registers, namesOfData.labelSize).filter(({ fact }) => !fact.retired);
  const [id, setId] = useState(kept.id);
  const [typed, setTyped] = useState('1');
  const size = sizes.find((each) => each.id === id) ?? sizes[0];
  if (!size) return <NoSize title={title} />;
  const perPage = labelsPerPage(size.fact);
  const first = readWholeNumber(typed, { least: 1, most: perPage });
  const { notice, refused } = judge(size.fact);
  const notUnderstood = perPage > 1 && !first.ok ? words.whichFree : undefined;
  return (
    <>
      <Panel
        title={title}
        actions={<PressButton label={words.setUpSizes} onAct={() => goTo('set-up', 'labels')} />}
      >
        {children}
        <SelectField
          label={words.size}
          options={sizes.map((each) => ({ value: each.id, label: each.fact.name }))}
          value={size.id}
          onChoose={(next) => {
            kept.id = next;
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
        {notice}
      </Panel>
      {face && (
        <Pages
          things={things}
          size={size}
          firstFree={perPage > 1 && first.ok ? first.value - 1 : 0}
          // What is not understood is not guessed, and nothing is printed on a size that is too small.
          refused={notUnderstood ?? refused}
          face={face}
        />
      )}
    </>
  );
};

const NoSize = ({ title }: { title: string }) => (
  <Panel title={title}>
    <PressButton tone="go" label={words.addSize} onAct={() => goTo('set-up', 'labels')} />
  </Panel>
);

interface PagesProps<Thing extends LabelThing> {
  readonly things: readonly Thing[];
  readonly size: Entry<'label-size'>;
  readonly firstFree: number;
  readonly refused: string | undefined;
  readonly face: LabelFace<Thing>;
}

const Pages = <Thing extends LabelThing>({ things, size, firstFree, refused, face }: PagesProps<Thing>) => {
  const pages = useMemo(
    () => pagesOfLabels(things, { size: size.fact, firstFree }),
    [things, size, firstFree],
  );
  const printed = useMemo(
    () =>
      pages.map((labels) => (
        <div class="print-page" key={labels[0]?.thing.key}>
          <LabelSheet size={size.fact} labels={labels} face={face} />
        </div>
      )),
    [pages, size, face],
  );
  const refusedBecause = pages.length === 0 ? words.chooseTrays : refused;
  return (
    <Panel
      title={words.preview}
      lead={words.pages(pages.length)}
      actions={<PrintButton refusedBecause={refusedBecause} />}
    >
      <p>{words.atFullSize}</p>
      {pages.length > 0 && <Preview pages={pages} size={size} face={face} />}
      {refusedBecause === undefined && (
        <PrintRoot page={pageInMm(size.fact)} margin={0}>
          {printed}
        </PrintRoot>
      )}
    </Panel>
  );
};

interface PreviewProps<Thing extends LabelThing> extends Pick<PagesProps<Thing>, 'size' | 'face'> {
  readonly pages: readonly (readonly PlacedLabel<Thing>[])[];
}

/** One page at a time, with the labels' edges. */
const Preview = <Thing extends LabelThing>({ pages, size, face }: PreviewProps<Thing>) => {
  const [at, setAt] = useState(0);
  const page = Math.min(at, pages.length - 1);
  return (
    <figure class="print-preview">
      <LabelSheet size={size.fact} labels={pages[page] ?? []} face={face} outlines />
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
