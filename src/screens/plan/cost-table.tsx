import { useState } from 'preact/hooks';
import type { CostOfVariant, CostQuestion, CostStudy } from '../../domain/plan/cost/cost-study.ts';
import { Field } from '../../ui/field/field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { costWords as words } from '../../words/cost-words.ts';
import { nameOf } from '../../words/names.ts';
import { studyWords } from '../../words/study-words.ts';
import { useShop } from '../parts/app-context.ts';
import { checkOf, readMargin } from './cost-view.ts';

/** Whole per cent of the price, until the maker says another. */
const usualMargin = '40';

/** The cost of a good piece, variant by variant, and its price held against it. */
export const CostTable = ({ study, question }: { study: CostStudy; question: CostQuestion }) => {
  const { registers } = useShop();
  const variantName = (id: string) => nameOf(registers, { register: 'variant', id });
  return (
    <Panel
      title={words.perGood}
      lead={words.perGoodLead}
      actions={<Means label={studyWords.means}>{words.perGoodMeans}</Means>}
      testId="cost-per-good"
    >
      <DataTable
        caption={words.perGood}
        captionUnseen
        columns={costColumns(variantName)}
        rows={study.variants}
        rowKey={({ variant }) => variant}
      />
      <p class="plan-note">{words.rateNote}</p>
      <Prices study={study} question={question} variantName={variantName} />
    </Panel>
  );
};

const lines = ['parts', 'labour', 'consumables', 'scrap', 'markdown'] as const;

function costColumns(variantName: (id: string) => string): readonly Column<CostOfVariant>[] {
  return [
    { key: 'variant', head: words.variant, cell: ({ variant }) => variantName(variant) },
    {
      key: 'whole',
      head: words.whole,
      numeric: true,
      cell: ({ cost, variant }) => <b data-testid={`cost-of-${variant}`}>{wholeWords(cost)}</b>,
    },
    ...lines.map((key) => ({
      key,
      head: words[key],
      numeric: true,
      cell: ({ cost }: CostOfVariant) =>
        cost.kind === 'known' ? words.money(cost.perGood[key]) : words.dash,
    })),
  ];
}

interface PricesProps {
  readonly study: CostStudy;
  readonly question: CostQuestion;
  readonly variantName: (id: string) => string;
}

/** Prices of firsts against what a good piece cost. */
const Prices = ({ study, question, variantName }: PricesProps) => {
  const [margin, setMargin] = useState(usualMargin);
  const wanted = readMargin(margin);
  const priceOf = (variant: string) =>
    question.variants.find((each) => each.variant === variant)?.firstPrice ?? null;
  const rows = study.variants.map((of) => {
    const price = priceOf(of.variant);
    return { variant: of.variant, price, check: checkOf(of, { price, margin: wanted }) };
  });
  return (
    <>
      <div class="plan-fields">
        <Field
          label={words.wantedMargin}
          hint={words.wantedMarginHint}
          kind="number"
          unit="%"
          value={margin}
          onText={setMargin}
          error={wanted === undefined ? words.badMargin : undefined}
          testId="cost-margin"
        />
      </div>
      <DataTable
        caption={words.prices}
        columns={[
          { key: 'variant', head: words.variant, cell: ({ variant }) => variantName(variant) },
          {
            key: 'price',
            head: words.price,
            numeric: true,
            cell: ({ price }) => (price === null ? words.notKnown : words.money(price)),
          },
          {
            key: 'margin',
            head: words.margin,
            numeric: true,
            cell: ({ check }) => (check?.margin === undefined ? words.dash : words.marginIs(check.margin)),
          },
          {
            key: 'verdict',
            head: words.verdict,
            cell: ({ variant, check }) => (
              <span data-testid={`price-of-${variant}`}>
                {check ? words.verdicts[check.verdict] : words.notKnown}
              </span>
            ),
          },
          {
            key: 'least',
            head: words.leastPrice,
            numeric: true,
            cell: ({ check }) => (check ? words.money(check.leastPrice) : words.dash),
          },
        ]}
        rows={rows}
        rowKey={({ variant }) => variant}
        rowTone={({ check }) => (check?.verdict === 'below-cost' ? 'flaw' : undefined)}
      />
    </>
  );
};

function wholeWords(cost: CostOfVariant['cost']): string {
  switch (cost.kind) {
    case 'known':
      return words.money(cost.perGood.whole);
    case 'none-good':
      return words.noneGood;
    case 'not-known':
      return cost.atLeast > 0 ? words.atLeast(cost.atLeast) : words.notKnown;
  }
}
