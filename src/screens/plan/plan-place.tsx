import './plan.css';
import type { ComponentType } from 'preact';
import { batchTargets } from '../../domain/rollup/batch-targets.ts';
import { factsOf } from '../../domain/shop/registers.ts';
import { EmptyState } from '../../ui/notice/empty-state.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { planWords as words } from '../../words/plan-words.ts';
import { address, goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';
import { type PlanPage, planIcons, planPageOf, planPages } from '../parts/plan-pages.ts';
import { ConstraintPage } from './constraint-page.tsx';
import { CostPage } from './cost-page.tsx';
import { ForecastPage } from './forecast-page.tsx';
import type { PlanPageProps } from './plan-page-props.ts';
import { ReviewPage } from './review-page.tsx';
import { StartsPage } from './starts-page.tsx';
import { TargetsPage } from './targets-page.tsx';
import { TodayPage } from './today-page.tsx';
import { WhatIfPage } from './what-if-page.tsx';

const pages: Readonly<Record<PlanPage, ComponentType<PlanPageProps>>> = {
  targets: TargetsPage,
  today: TodayPage,
  forecast: ForecastPage,
  'what-if': WhatIfPage,
  starts: StartsPage,
  constraint: ConstraintPage,
  cost: CostPage,
  review: ReviewPage,
};

/** What is wanted, and what follows from it. */
export const PlanPlace = () => {
  const page = planPageOf(address.value.rest[0]);
  const shop = useShop();
  const batches = batchTargets(shop);
  const Page = pages[page];
  // What is put away can be looked back at.
  const isEnough = batches.length > 0 || (page === 'review' && factsOf(shop.registers, 'batch').length > 0);
  if (isEnough) return <Page key={page} batches={batches} rack={<PlanRack current={page} />} />;
  return (
    <main class="plan">
      <h1>{words.pages[page].title}</h1>
      <PlanRack current={page} />
      <EmptyState
        icon="plan"
        title={words.noBatch}
        action={
          <PressButton
            tone="go"
            label={words.toBatches}
            onAct={() => goTo('set-up', 'batches')}
            testId="plan-to-batches"
          />
        }
      >
        {words.noBatchHelp}
      </EmptyState>
    </main>
  );
};

const PlanRack = ({ current }: { current: PlanPage }) => (
  <nav aria-label={words.rack}>
    <ul class="plan-rack">
      {planPages
        .filter((page) => page !== current)
        .map((page) => (
          <li key={page}>
            <PressButton
              icon={planIcons[page]}
              label={words.pages[page].title}
              onAct={() => (page === 'targets' ? goTo('plan') : goTo('plan', page))}
              testId={`plan-to-${page}`}
            />
          </li>
        ))}
    </ul>
  </nav>
);
