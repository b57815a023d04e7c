import './welcome.css';
import { useEffect, useState } from 'preact/hooks';
import { systemClock } from '../../app/clock.ts';
import type { CopyDesk } from '../../app/copy-desk.ts';
import { askToKeep } from '../../app/keeping.ts';
import { startShop } from '../../app/starting-shop.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { manualWayWords as wayWords } from '../../words/manual-way-words.ts';
import { shellWords } from '../../words/shell-words.ts';
import { welcomeWords as words } from '../../words/welcome-words.ts';
import { address, goTo, hrefOf } from '../parts/address.ts';
import { useApp, useSession } from '../parts/app-context.ts';
import { RestoreButton } from '../parts/files/restore-button.tsx';
import { JoinButton } from '../parts/join/join-button.tsx';
import { onDemand } from '../parts/on-demand.tsx';

const { Screen: Manual } = onDemand(async () => (await import('../parts/manual/manual.tsx')).Manual, null);

/** Whether the tablet's own shelf has copies of a shop. */
function useHasCopies(desk: CopyDesk | null): boolean {
  const [has, setHas] = useState(false);
  useEffect(() => {
    void desk
      ?.shelfNames()
      .then((names) => setHas(names.length > 0))
      .catch(() => undefined);
  }, [desk]);
  return has;
}

/** The first start: a shop of one's own, new or from a copy, or the demo, one tap away; and how it works. */
export const Welcome = () => {
  const { place, rest } = address.value;
  return place === 'set-up' && rest[0] === 'manual' ? <ManualBefore /> : <Ways />;
};

const ManualBefore = () => (
  <main class="welcome">
    <header class="welcome-head">
      <h1>{wayWords.title}</h1>
      <PressButton icon="back" label={wayWords.back} onAct={() => goTo('bench')} testId="manual-back" />
    </header>
    <Manual />
  </main>
);

const Ways = () => {
  const app = useApp();
  const session = useSession();
  const [busy, setBusy] = useState(false);
  const desk = app.copies.desk.value;
  const hasCopies = useHasCopies(desk);
  const restoreDetail = hasCopies ? words.restoreHereDetail : words.restoreDetail;
  const begin = async () => {
    setBusy(true);
    // Without this promise a browser empties the whole app, both copies of the log, when the disk is full.
    void askToKeep().catch(() => undefined);
    await startShop(session, { zone: systemClock.zone(), stationName: shellWords.stationName });
  };
  return (
    <main class="welcome" aria-busy={busy}>
      <h1>{words.title}</h1>
      <p class="welcome-lead">{words.lead}</p>
      <div class="welcome-ways">
        <PressButton
          size="bench"
          tone="go"
          icon="plus"
          label={words.newShop}
          detail={words.newShopDetail}
          closing
          onAct={() => void begin()}
          testId="new-shop"
        />
        {desk && <RestoreButton desk={desk} size="bench" label={words.restore} detail={restoreDetail} />}
        <JoinButton />
        <PressButton
          size="bench"
          icon="bench"
          label={words.demo}
          detail={words.demoDetail}
          closing
          onAct={() => void app.openDemo()}
          testId="open-demo"
        />
      </div>
      <a class="welcome-manual" href={hrefOf('set-up', 'manual')} data-testid="to-manual">
        {wayWords.title}
      </a>
      <Notice tone="warn" title={words.caution} />
    </main>
  );
};
