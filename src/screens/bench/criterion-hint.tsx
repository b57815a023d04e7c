import type { ComponentType } from 'preact';
import type { ReasonId } from '../../domain/log/ids.ts';
import { onDemand } from '../parts/on-demand.tsx';

/** What passes, in small pictures on the button of a check; fetched with the first check that is opened. */
export const CriterionHint: ComponentType<{ readonly reason: ReasonId }> = onDemand(
  async () => (await import('../parts/photos/criterion-pictures.tsx')).CriterionPictures,
  null,
).Screen;

/** The same, large enough to hold a piece beside it. */
export const CriterionStandard: ComponentType<{ readonly reason: ReasonId }> = onDemand(
  async () => (await import('../parts/photos/criterion-standard.tsx')).CriterionStandard,
  null,
).Screen;
