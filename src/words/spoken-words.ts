/** The language of these words, for the voice that says them. */
export const language = 'en';

/** What a tap was, and what the stage has of the tray after it. */
export interface SpokenCount {
  readonly tap: 'pass' | 'flaw' | 'undo' | 'load';
  /** Pieces of the tray that are past the stage, that wait at it and that cure at it. */
  readonly past: number;
  readonly waiting: number;
  readonly held: number;
}

/** A count to be heard: "21, 3 left". Numbers stay figures: the voice says them as its language does. */
export function spokenCount({ tap, past, waiting, held }: SpokenCount): string {
  const first = { pass: `${past}`, flaw: 'flaw', undo: 'taken back', load: 'loaded' }[tap];
  const left = waiting + held;
  const rest = held > 0 ? `${held} cure, ${waiting} left` : left === 0 ? 'none left' : `${left} left`;
  return `${first}, ${rest}`;
}

export const spokenRefusal = 'not counted';

/** What is said when the voice is tried. */
export const spokenSample = spokenCount({ tap: 'pass', past: 21, waiting: 3, held: 0 });
