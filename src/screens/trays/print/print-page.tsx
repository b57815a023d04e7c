import './print.css';
import { useMemo, useState } from 'preact/hooks';
import { signOf } from '../../../domain/label/sign-of.ts';
import { readId, type TrayId, trayId } from '../../../domain/log/ids.ts';
import { ChoiceRow } from '../../../ui/field/choice-row.tsx';
import { EmptyState } from '../../../ui/notice/empty-state.tsx';
import { Notice } from '../../../ui/notice/notice.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { boxWords } from '../../../words/box-words.ts';
import { labelWords as words } from '../../../words/label-words.ts';
import { traysWords } from '../../../words/trays-words.ts';
import { address, goTo } from '../../parts/address.ts';
import { useSession } from '../../parts/app-context.ts';
import { BoxesToPrint } from './boxes-to-print.tsx';
import { CardsToPrint } from './cards-to-print.tsx';
import { ChooseTrays } from './choose-trays.tsx';
import { LabelsToPrint } from './labels-to-print.tsx';

type What = 'labels' | 'cards' | 'boxes';

/** Labels, route cards and sheets for the box: which trays, how, and what the paper will look like. */
export const PrintPage = () => {
  const [what, ...ids] = address.value.rest;
  const shown: What = what === 'cards' || what === 'boxes' ? what : 'labels';
  const asked = ids.map((id) => readId(trayId, id)).filter((id) => id !== null);
  return <Print key={asked.join()} what={shown} asked={asked} />;
};

const Print = ({ what, asked }: { what: What; asked: readonly TrayId[] }) => {
  const view = useSession().view.value;
  const { shop } = view;
  const [chosen, setChosen] = useState<ReadonlySet<TrayId>>(() => new Set(asked));
  // In the order of the list, whatever the order in which they were chosen.
  const trays = useMemo(
    () =>
      [...view.shop.trays.values()]
        .filter(({ tray }) => chosen.has(tray))
        .toSorted((a, b) => a.code.localeCompare(b.code, 'en', { numeric: true })),
    [view, chosen],
  );
  return (
    <main class="trays">
      <header class="trays-head">
        <h1>{words.title}</h1>
        <PressButton icon="back" label={traysWords.toTrays} onAct={() => goTo('trays')} testId="print-back" />
      </header>
      {shop.trays.size === 0 ? (
        <EmptyState icon="trays" title={words.noTrays}>
          {words.noTraysHelp}
        </EmptyState>
      ) : (
        <>
          {signOf(shop.registers) === undefined && (
            <Notice
              tone="warn"
              title={words.noSign}
              actions={<PressButton label={words.toShop} onAct={() => goTo('set-up', 'tablet')} />}
              testId="no-sign"
            >
              {words.noSignHelp}
            </Notice>
          )}
          <Panel title={words.what}>
            <ChoiceRow
              label={words.what}
              choices={[
                { value: 'labels', label: words.labels, detail: words.whatLabels },
                { value: 'cards', label: words.cards, detail: words.whatCards },
                { value: 'boxes', label: boxWords.short, detail: boxWords.whatBoxes },
              ]}
              value={what}
              onChoose={(next) => goTo('trays', next, ...asked)}
              testId="print-what"
            />
          </Panel>
          <ChooseTrays chosen={chosen} onChoose={setChosen} />
          {what === 'labels' && <LabelsToPrint trays={trays} />}
          {what === 'cards' && <CardsToPrint trays={trays} />}
          {what === 'boxes' && <BoxesToPrint trays={trays} />}
        </>
      )}
    </main>
  );
};
