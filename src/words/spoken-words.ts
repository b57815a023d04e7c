import { inLanguage } from './language.ts';

/** What a tap was, and what the stage has of the tray after it. */
export interface SpokenCount {
  readonly tap: 'pass' | 'flaw' | 'undo' | 'load';
  /** Pieces of the tray that are past the stage, that wait at it and that cure at it. */
  readonly past: number;
  readonly waiting: number;
  readonly held: number;
}

export const spokenWords = inLanguage('spokenWords', {
  taps: { flaw: 'flaw', undo: 'taken back', load: 'loaded' },
  cure: (n: number) => `${n} cure`,
  left: (n: number) => `${n} left`,
  noneLeft: 'none left',
  refusal: 'not counted',
});

/** A count to be heard: "21, 3 left". Numbers stay figures: the voice says them as its language does. */
export function spokenCount({ tap, past, waiting, held }: SpokenCount): string {
  const first = tap === 'pass' ? `${past}` : spokenWords.taps[tap];
  const left = waiting === 0 && held === 0 ? spokenWords.noneLeft : spokenWords.left(waiting);
  return held > 0 ? `${first}, ${spokenWords.cure(held)}, ${left}` : `${first}, ${left}`;
}

/** What is said when the voice is tried. */
export const spokenSample = spokenCount({ tap: 'pass', past: 21, waiting: 3, held: 0 });
