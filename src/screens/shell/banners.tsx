import { systemClock } from '../../app/clock.ts';
import { isClosed } from '../../app/kept-lock.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { bannerWords as words } from '../../words/banner-words.ts';
import { useApp, useSession } from '../parts/app-context.ts';
import { cureCalls, potOver } from '../parts/cure-call.ts';
import { justJoined } from '../parts/join/just-joined.ts';
import { onDemand } from '../parts/on-demand.tsx';
import { PlacesLink } from './places-link.tsx';

const { Screen: Forgets } = onDemand(async () => (await import('./forgets-notice.tsx')).ForgetsNotice, null);
const { Screen: UpdateNews } = onDemand(async () => (await import('./update-news.tsx')).UpdateNews, null);
const { Screen: ClockNotice } = onDemand(async () => (await import('./clock-notice.tsx')).ClockNotice, null);

const { Screen: News } = onDemand(async () => (await import('./standing-news.tsx')).StandingNews, null);
const { Screen: Copies } = onDemand(async () => (await import('./copies-notice.tsx')).CopiesNotice, null);
const { Screen: Restored } = onDemand(
  async () => (await import('./restored-notice.tsx')).RestoredNotice,
  null,
);
const { Screen: Arrived } = onDemand(async () => (await import('./arrived-notice.tsx')).ArrivedNotice, null);
const { Screen: OnlyLooking } = onDemand(async () => (await import('./only-looking.tsx')).OnlyLooking, null);

/** What became of the two copies of the log; nothing while all is well. */
const CopiesBanner = () => {
  const opening = useApp().opening.value;
  const copies = opening.kind === 'open' ? opening.twoCopies : null;
  if (!copies) return null;
  const { putBack, missing, suspect, twin } = copies.state.value;
  return putBack > 0 || missing > 0 || suspect || twin === 'failed' ? <Copies copies={copies} /> : null;
};

/** That this window keeps nothing, or perhaps nothing. */
const ForgetsBanner = () => {
  const { forgets } = useApp();
  return forgets === 'nothing' ? null : <Forgets forgets={forgets} />;
};

/** What holds for every place: that this is the demo, that some entries cannot be counted, that the clock is in doubt. */
export const Banners = () => {
  const app = useApp();
  const letterNews = app.preferences.letterNews.value;
  const locked = isClosed(app.preferences.lock.value, systemClock.now());
  const { view, clockWatch } = useSession();
  const { shop, uncounted } = view.value;
  const opening = app.opening.value;
  const restored = app.copies.restored.value && !locked && <Restored />;
  // Before there is a shop little can be said of it.
  if (shop.registers.size === 0)
    return (
      <>
        <ForgetsBanner />
        <CopiesBanner />
        {restored}
      </>
    );
  return (
    <>
      <PlacesLink />
      <ForgetsBanner />
      {app.updates.arrived.value && <UpdateNews />}
      <CopiesBanner />
      {opening.kind === 'open' && opening.onlyLooking && <OnlyLooking />}
      {opening.kind === 'open' && opening.which === 'demo' && (
        <Notice
          tone="info"
          title={words.demoBanner}
          testId="demo-banner"
          actions={
            !locked && (
              <PressButton
                label={words.leaveDemo}
                closing
                onAct={() => void app.leaveDemo()}
                testId="leave-demo"
              />
            )
          }
        />
      )}
      {(letterNews || cureCalls.value.length > 0 || potOver.value) && <News />}
      {clockWatch.unsaid.value && <ClockNotice />}
      {restored}
      {justJoined.value && <Arrived />}
      {uncounted > 0 && <Notice tone="warn" title={words.uncounted(uncounted)} />}
    </>
  );
};
