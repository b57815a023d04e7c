import type { TrayId } from '../../../domain/log/ids.ts';
import { shopDay, usualDayStart } from '../../../domain/log/zone.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import { Disclosure } from '../../../ui/notice/disclosure.tsx';
import { Panel } from '../../../ui/panel/panel.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { labelWords as words } from '../../../words/label-words.ts';
import { nameOf } from '../../../words/names.ts';
import { useSession, useShop } from '../../parts/app-context.ts';
import { type TrayRow, traysInWork } from '../trays-view.ts';
import { madeOn, piecesOn } from './label-view.ts';

export interface ChooseTraysProps {
  readonly chosen: ReadonlySet<TrayId>;
  readonly onChoose: (chosen: ReadonlySet<TrayId>) => void;
}

/** Which trays: all in work, those of today, or one by one. */
export const ChooseTrays = ({ chosen, onChoose }: ChooseTraysProps) => {
  const session = useSession();
  const shop = useShop();
  const { live, done } = traysInWork(shop);
  const startHour = factOf(shop.registers, { register: 'shop', id: 'shop' })?.dayStartHour ?? usualDayStart;
  const dayOf = (at: number) => shopDay(at, { zone: session.zone(), startHour });
  const take = (trays: Iterable<{ readonly tray: TrayId }>) =>
    onChoose(new Set([...trays].map(({ tray }) => tray)));
  const toggle = (tray: TrayId) => {
    const next = new Set(chosen);
    if (!next.delete(tray)) next.add(tray);
    onChoose(next);
  };
  return (
    <Panel
      title={words.which}
      lead={<span data-testid="print-chosen">{words.chosen(chosen.size)}</span>}
      actions={
        <>
          <PressButton
            label={words.all}
            onAct={() => take(live.map(({ tray }) => tray))}
            testId="print-all"
          />
          <PressButton
            label={words.newest}
            onAct={() => take(madeOn(shop.trays.values(), { day: session.today(), dayOf }))}
            testId="print-newest"
          />
          <PressButton label={words.none} onAct={() => take([])} testId="print-none" />
        </>
      }
    >
      <Boxes rows={live} chosen={chosen} onToggle={toggle} />
      {done.length > 0 && (
        <Disclosure summary={words.done(done.length)} testId="print-done">
          <Boxes rows={done} chosen={chosen} onToggle={toggle} />
        </Disclosure>
      )}
    </Panel>
  );
};

interface BoxesProps {
  readonly rows: readonly TrayRow[];
  readonly chosen: ReadonlySet<TrayId>;
  readonly onToggle: (tray: TrayId) => void;
}

const Boxes = ({ rows, chosen, onToggle }: BoxesProps) => {
  const shop = useShop();
  return (
    <ul class="print-trays">
      {rows.map(({ tray }) => (
        <li key={tray.tray}>
          <label class="print-tray">
            <input
              type="checkbox"
              checked={chosen.has(tray.tray)}
              onChange={() => onToggle(tray.tray)}
              data-testid={`print-tray-${tray.code}`}
            />
            <span class="code">{tray.code}</span>
            <span dir="auto">
              {nameOf(shop.registers, { register: 'variant', id: tray.variant })},{' '}
              {words.onLabel(piecesOn(shop, tray.tray))}
            </span>
          </label>
        </li>
      ))}
    </ul>
  );
};
