import type { IconName } from '../../ui/icon/icon-paths.ts';

/** The pages of the plan; an address has the name of each but the first, which is the place itself. */
export const planPages = [
  'targets',
  'today',
  'forecast',
  'what-if',
  'starts',
  'constraint',
  'cost',
  'review',
] as const;
export type PlanPage = (typeof planPages)[number];

export const planIcons: Readonly<Record<PlanPage, IconName>> = {
  targets: 'plan',
  today: 'next',
  forecast: 'day',
  'what-if': 'more',
  starts: 'plus',
  constraint: 'hold',
  cost: 'label',
  review: 'check',
};

/** The page of an address. */
export function planPageOf(name: string | undefined): PlanPage {
  return planPages.find((each) => each === name) ?? 'targets';
}
