/** One tone: frequency in Hz, length and the rest after it in ms. */
export interface Tone {
  readonly hz: number;
  readonly ms: number;
  readonly rest: number;
}

export type ToneName = 'saved' | 'not-saved' | 'flaw' | 'undone';
export type TonePlan = readonly Tone[];

/**
 * The four answers to a tap. All tones lie between 700 and 3000 Hz, each plan has two below 1500 Hz for wearers of
 * ear muffs, neighbours are at least a fifth apart, and a tone lasts 150 to 350 ms: rules of the bench.
 */
export const tonePlans: Readonly<Record<ToneName, TonePlan>> = {
  saved: [
    { hz: 1040, ms: 150, rest: 20 },
    { hz: 1390, ms: 150, rest: 0 },
  ],
  flaw: [
    { hz: 1390, ms: 150, rest: 20 },
    { hz: 1040, ms: 150, rest: 20 },
    { hz: 1390, ms: 150, rest: 0 },
  ],
  undone: [
    { hz: 1390, ms: 150, rest: 20 },
    { hz: 920, ms: 200, rest: 0 },
  ],
  'not-saved': [
    { hz: 740, ms: 350, rest: 120 },
    { hz: 740, ms: 350, rest: 120 },
    { hz: 740, ms: 350, rest: 0 },
  ],
};

/** Vibration for the same answers, in ms on and off; nothing depends on it. */
export const vibrations: Readonly<Record<ToneName, readonly number[]>> = {
  saved: [40],
  flaw: [40, 60, 40],
  undone: [80],
  'not-saved': [300, 120, 300, 120, 300],
};

/** How long a plan lasts in ms. */
export function lengthOf(plan: TonePlan): number {
  return plan.reduce((sum, { ms, rest }) => sum + ms + rest, 0);
}
