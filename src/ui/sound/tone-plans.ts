/** One tone: its parts in Hz, all at once; its length and the rest after it in ms. */
interface Tone {
  readonly parts: readonly number[];
  readonly ms: number;
  readonly rest: number;
}

/** The answers to a tap, in the order in which they are tried out, and the one call that no tap asks for: a cure is over. */
export const toneNames = ['saved', 'last', 'flaw', 'undone', 'refused', 'not-saved', 'cured'] as const;
export type ToneName = (typeof toneNames)[number];
export type TonePlan = readonly Tone[];

/**
 * Saved rises, and rises on where a tray is done; undone falls, a flaw knocks three times; what was refused or not saved is
 * long, low and rough; a cure that is over swings to and fro, slower than any answer. All parts lie between 700
 * and 3000 Hz, each plan has two below 1500 Hz for wearers of ear muffs, any two of a plan are a fifth of their height
 * apart or more, and a tone lasts 150 to 350 ms: rule 20 of the rules for the bench screens.
 */
export const tonePlans: Readonly<Record<ToneName, TonePlan>> = {
  saved: [
    { parts: [1040], ms: 150, rest: 20 },
    { parts: [1390], ms: 150, rest: 0 },
  ],
  last: [
    { parts: [1040], ms: 150, rest: 20 },
    { parts: [1390], ms: 150, rest: 20 },
    { parts: [1850], ms: 150, rest: 0 },
  ],
  flaw: [
    { parts: [1390], ms: 150, rest: 20 },
    { parts: [1040], ms: 150, rest: 20 },
    { parts: [1390], ms: 150, rest: 0 },
  ],
  undone: [
    { parts: [1390], ms: 150, rest: 20 },
    { parts: [920], ms: 200, rest: 0 },
  ],
  refused: [
    { parts: [920, 1160], ms: 300, rest: 80 },
    { parts: [920, 1160], ms: 300, rest: 0 },
  ],
  'not-saved': [
    { parts: [720, 900], ms: 350, rest: 120 },
    { parts: [720, 900], ms: 350, rest: 120 },
    { parts: [720, 900], ms: 350, rest: 0 },
  ],
  cured: [
    { parts: [1160], ms: 300, rest: 120 },
    { parts: [920], ms: 300, rest: 120 },
    { parts: [1160], ms: 300, rest: 120 },
    { parts: [920], ms: 300, rest: 0 },
  ],
};

/** Vibration for the same answers, in ms on and off; nothing depends on it. */
export const vibrations: Readonly<Record<ToneName, readonly number[]>> = {
  saved: [40],
  last: [40, 60, 120],
  flaw: [40, 60, 40],
  undone: [80],
  refused: [200, 80, 200],
  'not-saved': [300, 120, 300, 120, 300],
  cured: [120, 120, 120, 120, 120, 120, 120],
};

/** How long a plan lasts in ms. */
export const lengthOf = (plan: TonePlan): number => plan.reduce((sum, { ms, rest }) => sum + ms + rest, 0);

/** What was last begun, and when (ms). */
export interface Sounding {
  readonly name: ToneName;
  readonly at: number;
}

/** No answer follows another sooner than this: at most three a second. */
const leastBetweenMs = 334;

/** What is told cuts into what matters less: a call into nothing, an answer into a call, "not saved" into both. */
const rankOf = (name: ToneName): number => (name === 'not-saved' ? 2 : name === 'cured' ? 0 : 1);

/** Whether a sound may begin now. Quick taps are not all answered aloud. */
export const mayBegin = (last: Sounding | undefined, name: ToneName, at: number): boolean => {
  if (!last) return true;
  const isOver = at - last.at >= Math.max(leastBetweenMs, lengthOf(tonePlans[last.name]));
  return isOver || rankOf(name) > rankOf(last.name);
};
