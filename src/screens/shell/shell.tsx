import './shell.css';
import { useEffect, useState } from 'preact/hooks';
import { systemClock } from '../../app/clock.ts';
import { isClosed } from '../../app/kept-lock.ts';
import type { Session } from '../../app/session.ts';
import { usualStage } from '../../domain/route/live-stages.ts';
import { TabsNav } from '../../ui/places/tabs-nav.tsx';
import { shellWords as words } from '../../words/shell-words.ts';
import { BenchPlace } from '../bench/bench-place.tsx';
import { type Address, address, hrefOf, startAt } from '../parts/address.ts';
import { SessionContext, useApp, useShop } from '../parts/app-context.ts';
import { late } from '../parts/late.tsx';
import { onDemand } from '../parts/on-demand.tsx';
import { Unsaved } from '../parts/unsaved.tsx';
import { PlaceBoundary } from './place-boundary.tsx';
import { StandingMessage } from './standing-message.tsx';

const { Screen: Welcome } = onDemand(async () => (await import('../welcome/welcome.tsx')).Welcome);
const places = {
  trays: onDemand(async () => (await import('../trays/trays-place.tsx')).TraysPlace),
  stores: onDemand(async () => (await import('../stores/stores-place.tsx')).StoresPlace),
  yield: onDemand(async () => (await import('../yield/yield-place.tsx')).YieldPlace),
  study: onDemand(async () => (await import('../study/study-place.tsx')).StudyPlace),
  plan: onDemand(async () => (await import('../plan/plan-place.tsx')).PlanPlace),
  day: onDemand(async () => (await import('../day/day-place.tsx')).DayPlace),
  shelf: onDemand(async () => (await import('../shelf/shelf-place.tsx')).ShelfPlace),
  'set-up': onDemand(async () => (await import('../set-up/set-up-place.tsx')).SetUpPlace),
};

const { Screen: LockedPlace } = onDemand(async () => (await import('../lock/locked-place.tsx')).LockedPlace);

const Banners = late(async () => (await import('./banners.tsx')).Banners);
const StandingWatch = late(async () => (await import('./standing-watch.tsx')).StandingWatch);
const CopyAge = late(async () => (await import('./copy-age.tsx')).CopyAge);

/** The whole page: what stands in the way of the shop, or the shop's places. */
export const Shell = () => {
  const opening = useApp().opening.value;
  if (opening.kind !== 'open') return <StandingMessage opening={opening} />;
  return (
    <SessionContext.Provider value={opening.session}>
      <StandingWatch key={`watch of ${opening.which}`} />
      <OpenShop key={opening.which} session={opening.session} isOwn={opening.which === 'own'} />
    </SessionContext.Provider>
  );
};

const OpenShop = ({ session, isOwn }: { session: Session; isOwn: boolean }) => {
  const shop = useShop();
  useState(() => startAt(usualStage(shop.registers, session.station)));
  const { preferences } = useApp();
  const lock = preferences.lock.value;
  const locked = isClosed(lock, systemClock.now());
  const isWhole = session.isWhole.value;
  // Where a maker looks between two stages: these screens must stand the moment they are tapped.
  useEffect(() => {
    if (isWhole) for (const { ahead } of [places.yield, places.day, places.trays]) ahead();
  }, [isWhole]);
  if (shop.registers.size === 0) {
    return (
      <PlaceBoundary>
        <Banners />
        {locked ? <LockedPlace /> : <Welcome />}
      </PlaceBoundary>
    );
  }
  const now = address.value;
  if (isStageScreen(now))
    return (
      <PlaceBoundary key="stage">
        <BenchPlace />
      </PlaceBoundary>
    );
  const shut = locked && now.place !== 'bench' && !isScan(now);
  return (
    <div class="shell">
      <div class="shell-screen">
        <Banners />
        <PlaceBoundary key={shut ? 'locked' : now.place}>
          {shut ? <LockedPlace /> : <PlaceScreen at={now} isWhole={isWhole} />}
        </PlaceBoundary>
      </div>
      <div class="shell-places">
        {isOwn && isWhole && <CopyAge />}
        <Places current={now.place} locked={locked} />
      </div>
      <div class="shell-bar">
        <Unsaved />
      </div>
    </div>
  );
};

/** A stage screen stands alone: everything on it is for the hand at the lathe. */
const isStageScreen = ({ place, rest }: Address) => place === 'bench' && rest.length > 0;

/** Scanning belongs to the bench: it finds trays and does what a stage screen does. */
const isScan = ({ place, rest }: Address) => place === 'trays' && rest[0] === 'scan';

const PlaceScreen = ({ at: { place, rest }, isWhole }: { at: Address; isWhole: boolean }) => {
  if (place === 'bench') return <BenchPlace />;
  if (!isWhole) return <main aria-busy="true" />;
  // What the whole log tells stands behind Yield, and is code of its own.
  const isStudy = place === 'yield' && rest.length > 0;
  const { Screen } = places[isStudy ? 'study' : place];
  return <Screen />;
};

const Places = ({ current, locked }: { current: Address['place']; locked: boolean }) => {
  const closed = locked ? words.locked : undefined;
  const waiting = useApp().updates.waiting.value ? words.updateWaiting : undefined;
  return (
    <TabsNav
      label={words.places}
      moreLabel={words.more}
      closeLabel={words.close}
      current={current}
      places={[
        { id: 'bench', label: words.bench, icon: 'bench', href: hrefOf('bench') },
        { id: 'trays', label: words.trays, icon: 'trays', href: hrefOf('trays'), closed },
        { id: 'stores', label: words.stores, icon: 'stores', href: hrefOf('stores'), closed },
        { id: 'yield', label: words.yield, icon: 'yield', href: hrefOf('yield'), closed },
        { id: 'plan', label: words.plan, icon: 'plan', href: hrefOf('plan'), closed },
        { id: 'day', label: words.day, icon: 'day', href: hrefOf('day'), closed },
        { id: 'shelf', label: words.shelf, icon: 'shelf', href: hrefOf('shelf'), closed },
        { id: 'set-up', label: words.setUp, icon: 'set-up', href: hrefOf('set-up'), closed, waiting },
      ]}
    />
  );
};
