import { computed, signal } from '@preact/signals';
import type { StageId, TrayId } from '../../domain/log/ids.ts';

/** A round of a tray that has cured while the app was open, until it is taken out or put away. */
export interface CureCall {
  readonly tray: TrayId;
  readonly stage: StageId;
  readonly code: string;
  readonly pieces: number;
  readonly ready: number;
}

const calls = signal<readonly CureCall[]>([]);

/** Cures that were called and still wait to be seen to, the newest last. */
export const cureCalls = computed(() => calls.value);

export function callCures(fresh: readonly CureCall[]): void {
  if (fresh.length > 0) calls.value = [...calls.value, ...fresh];
}

/** Keeps the calls for which `waits` holds. */
export function keepCalls(waits: (call: CureCall) => boolean): void {
  const kept = calls.peek().filter(waits);
  if (kept.length < calls.peek().length) calls.value = kept;
}

/** A mix whose pot life ended while the app was open. */
export const potOver = signal<{ readonly stage: string; readonly ends: number } | null>(null);
