import type { ComponentChildren } from 'preact';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';

export interface PlanPageProps {
  /** Open batches: one at least, but for the review, which shows those that are put away too. */
  readonly batches: readonly BatchTargets[];
  /** The ways to the other pages. */
  readonly rack: ComponentChildren;
}
