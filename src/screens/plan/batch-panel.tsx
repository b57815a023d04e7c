import { useState } from 'preact/hooks';
import { daysBetween } from '../../domain/plan/working-hours.ts';
import { type BatchTargets, flyingOf, type VariantTarget } from '../../domain/rollup/batch-targets.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { planWords as words } from '../../words/plan-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { keptTargets, TargetsEdit } from './targets-edit.tsx';
import { missingOf, sumsOf } from './targets-view.ts';

/** What one batch wants and what there is of it; its targets are changed where they stand. */
export const BatchPanel = ({ batch }: { batch: BatchTargets }) => {
  const session = useSession();
  const { registers } = useShop();
  // What was typed and not saved is shown again where it was left.
  const [open, setOpen] = useState(() => keptTargets(session).has(batch.batch));
  const fact = factOf(registers, { register: 'batch', id: batch.batch });
  const left = batch.due === null ? 0 : daysBetween(session.today(), batch.due);
  const { wanted, firsts, seconds, flying, scrapped, missing } = sumsOf(batch.variants);
  return (
    <Panel
      title={<span class="plan-name">{batch.name}</span>}
      lead={`${batch.due === null ? words.noDue : words.dueOn(batch.due, left)} · ${words.sure(batch.chance)}`}
      tone={left < 0 ? 'warn' : 'plain'}
      actions={
        <PressButton
          icon={open ? 'cross' : 'pencil'}
          label={open ? words.close : words.change}
          name={`${open ? words.close : words.change}: ${batch.name}`}
          onAct={() => setOpen(!open)}
          testId={`targets-change-${batch.batch}`}
        />
      }
      testId={`targets-${batch.batch}`}
    >
      {open && fact && <TargetsEdit id={batch.batch} now={fact} onSaved={() => setOpen(false)} />}
      {batch.variants.length === 0 ? (
        <p>{words.nothingWanted}</p>
      ) : (
        <DataTable
          caption={words.targetsOf(batch.name)}
          captionUnseen
          columns={columnsOf((id) => nameOf(registers, { register: 'variant', id }))}
          rows={batch.variants}
          rowKey={({ variant }) => variant}
          foot={[
            words.all,
            ...[wanted, firsts, seconds].map(wholeNumber),
            words.flyingOf(flying.first, flying.second),
            ...[scrapped, missing].map(wholeNumber),
          ]}
        />
      )}
    </Panel>
  );
};

function columnsOf(variantName: (id: string) => string): readonly Column<VariantTarget>[] {
  const count = (
    key: 'wanted' | 'firsts' | 'seconds' | 'scrapped' | 'missing',
    of: (row: VariantTarget) => number,
  ) => ({
    key,
    head: words[key],
    numeric: true,
    cell: (row: VariantTarget) => <span data-testid={`${key}-${row.variant}`}>{wholeNumber(of(row))}</span>,
  });
  return [
    { key: 'variant', head: words.variant, cell: ({ variant }) => variantName(variant) },
    count('wanted', ({ wanted }) => wanted),
    count('firsts', ({ finished }) => finished.first),
    count('seconds', ({ finished }) => finished.second),
    {
      key: 'flying',
      head: words.flying,
      numeric: true,
      cell: (row) => {
        const { first, second } = flyingOf(row);
        return words.flyingOf(first, second);
      },
    },
    count('scrapped', ({ scrapped }) => scrapped),
    count('missing', missingOf),
  ];
}
