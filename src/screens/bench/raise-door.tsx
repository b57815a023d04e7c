import type { ComponentType } from 'preact';
import type { StageId, TrayId } from '../../domain/log/ids.ts';
import { onDemand } from '../parts/on-demand.tsx';

/** Raises the seconds that a tray has at a stage; fetched with the first of them, not with the first screen. */
export const RaiseDoor: ComponentType<{ readonly tray: TrayId; readonly stage: StageId }> = onDemand(
  async () => (await import('../parts/raise/raise-at-bench.tsx')).RaiseAtBench,
  null,
).Screen;
