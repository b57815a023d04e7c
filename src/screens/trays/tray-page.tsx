import { useState } from 'preact/hooks';
import type { TrayId } from '../../domain/log/ids.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { BigCode } from '../../ui/bench/big-code.tsx';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { labelWords } from '../../words/label-words.ts';
import { nameOf } from '../../words/names.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { EventHistory } from '../parts/event-history.tsx';
import { RaiseButton } from '../parts/raise/raise-button.tsx';
import { secondsOfTray } from '../parts/raise/raise-view.ts';
import { WoodName } from '../parts/wood-name.tsx';
import { JoinSheet } from './join-sheet.tsx';
import { RecountSheet } from './recount-sheet.tsx';
import { SharedCodes } from './shared-codes.tsx';
import { SplitSheet } from './split-sheet.tsx';
import { spotWords } from './spot-words.ts';
import { TrayPhotos } from './tray-photos.tsx';
import { type OutOfWork, outOfWork, spotKey, spotsOf, type TrayRow, trayRow } from './trays-view.ts';

type Open = 'split' | 'join' | 'recount' | null;

/** One tray: what it is, where its pieces are, what can be done with it, and all that happened to it. */
export const TrayPage = ({ id }: { id: TrayId }) => {
  const shop = useShop();
  const [open, setOpen] = useState<Open>(null);
  const tray = shop.trays.get(id);
  if (!tray) {
    return (
      <main class="trays">
        <EmptyState
          title={words.goneTitle}
          action={<PressButton icon="back" label={words.toTrays} onAct={() => goTo('trays')} />}
        >
          {words.goneHelp}
        </EmptyState>
      </main>
    );
  }
  const row = trayRow(shop, tray);
  const caution = factOf(shop.registers, { register: 'species', id: tray.species })?.caution;
  const close = () => setOpen(null);
  return (
    <main class="trays">
      <header class="trays-head">
        <div>
          <h1 class="unseen">{words.tray(tray.code)}</h1>
          <BigCode code={tray.code} name={words.tray(tray.code)} testId="tray-code" />
          <p class="trays-what">
            <span dir="auto">{nameOf(shop.registers, { register: 'variant', id: tray.variant })}</span>
            <WoodName species={tray.species} />
            <span>
              {words.batch}: {nameOf(shop.registers, { register: 'batch', id: tray.batch })}
            </span>
          </p>
        </div>
        <PressButton icon="back" label={words.toTrays} onAct={() => goTo('trays')} />
      </header>
      <SharedCodes only={tray.code} />
      {caution && (
        <Notice tone="warn" title={words.caution}>
          {caution}
        </Notice>
      )}
      <Counts row={row} out={outOfWork(shop, id)} onOpen={setOpen} />
      <OnPaper tray={id} />
      <TrayPhotos tray={tray} />
      <EventHistory of={id} />
      {open === 'split' && <SplitSheet row={row} onClose={close} />}
      {open === 'join' && <JoinSheet tray={tray} onClose={close} />}
      {open === 'recount' && <RecountSheet row={row} onClose={close} />}
    </main>
  );
};

/** What goes onto paper, and comes back from it. */
const OnPaper = ({ tray }: { tray: TrayId }) => (
  <div class="trays-acts">
    <PressButton
      icon="label"
      label={labelWords.printLabel}
      onAct={() => goTo('trays', 'labels', tray)}
      testId="tray-label"
    />
    <PressButton
      icon="plan"
      label={labelWords.printCard}
      onAct={() => goTo('trays', 'cards', tray)}
      testId="tray-card"
    />
    <PressButton
      icon="pencil"
      label={labelWords.enterCard}
      onAct={() => goTo('trays', 'card', tray)}
      testId="tray-enter-card"
    />
  </div>
);

interface CountsProps {
  readonly row: TrayRow;
  readonly out: OutOfWork;
  readonly onOpen: (what: Open) => void;
}

const Counts = ({ row, out, onOpen }: CountsProps) => {
  const shop = useShop();
  const spots = spotsOf(row);
  const inWork = spots.length > 0;
  return (
    <Panel
      title={words.counts}
      actions={
        <>
          {inWork && (
            <>
              <PressButton
                icon="split"
                label={words.split}
                onAct={() => onOpen('split')}
                testId="split-open"
              />
              <PressButton icon="join" label={words.join} onAct={() => onOpen('join')} testId="join-open" />
              <PressButton
                icon="recount"
                label={words.recount}
                onAct={() => onOpen('recount')}
                testId="recount-open"
              />
            </>
          )}
          <RaiseButton
            what={row.tray.code}
            seconds={secondsOfTray(shop, row.tray.tray)}
            testId="raise-open"
          />
        </>
      }
    >
      {!inWork && <p>{words.nowhere}</p>}
      <ul class="trays-spots">
        {spots.map((spot) => (
          <li key={spotKey(spot)}>
            <PressButton
              size="bench-small"
              icon={spot.at === 'held' ? 'hold' : 'bench'}
              label={spotWords(spot, shop.registers)}
              detail={spot.shown < 0 ? words.toCheck : words.workHere}
              tone={spot.shown < 0 ? 'flaw' : 'plain'}
              onAct={() => (spot.shown < 0 ? onOpen('recount') : goTo('bench', spot.stage, spot.tray))}
              testId={`spot-${spotKey(spot)}`}
            />
          </li>
        ))}
      </ul>
      <p class="trays-what">
        {(['first', 'second'] as const).map(
          (grade) => out[grade] !== 0 && <span key={grade}>{words.finished(out[grade], grade)}</span>,
        )}
        {out.scrapped !== 0 && <span>{words.scrapped(out.scrapped)}</span>}
      </p>
    </Panel>
  );
};
