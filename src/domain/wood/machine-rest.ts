import type { StageId } from '../log/ids.ts';
import type { MachineFact } from '../set-up/facts.ts';

/** A stretch of work at a stage, ms of one clock. */
export interface Worked {
  readonly stage: StageId;
  readonly from: number;
  readonly to: number;
}

export type MachineRest =
  | { readonly kind: 'runs' /** Minutes since its last rest. */; readonly minutes: number }
  /** It has run as long as it may: so many minutes of rest are left. */
  | { readonly kind: 'rest'; readonly minutes: number; readonly left: number };

const minute = 60_000;

/**
 * How long a machine has run since its last rest, counted from the stretches of work at its stages, whose order does not
 * matter. Standing still for the rest that it needs starts the count anew; a shorter halt does not, and does not count.
 * `duty` are minutes; `now` is of the clock of the stretches.
 */
export function machineRest(
  worked: readonly Worked[],
  {
    stages,
    duty,
    now,
  }: Pick<MachineFact, 'stages'> & { duty: NonNullable<MachineFact['duty']>; now: number },
): MachineRest {
  const rest = duty.off * minute;
  const own = worked.filter(({ stage }) => stages.includes(stage)).toSorted((a, b) => a.from - b.from);
  let ran = 0;
  let until = Number.NEGATIVE_INFINITY;
  for (const { from, to } of own) {
    if (from - until >= rest) ran = 0;
    ran += Math.max(0, to - Math.max(from, until));
    until = Math.max(until, to);
  }
  if (now - until >= rest) return { kind: 'runs', minutes: 0 };
  const minutes = ran / minute;
  if (minutes < duty.on) return { kind: 'runs', minutes };
  return { kind: 'rest', minutes, left: Math.min(rest, rest - (now - until)) / minute };
}
