import { cutEvent } from './cut-event.ts';
import { nameIn } from './event-texts.ts';
import type { Numbers } from './read-values.ts';
import { filled, noFacts } from './sample-event.ts';
import type { TextKind } from './shape.ts';
import type { JudgeParts } from './sound-texts.ts';

/** Longer forms are none that a shop has thousands of. */
export const longestForm = 4096;

/** The least numbers that may stand in an event. */
export const least: Numbers = { seq: 1, wall: 0, tick: 0, elapsed: 0, time: 0 };
const id = 'z'.repeat(40);
const longFacts = { tray: id, code: 'A'.repeat(12), variant: id, species: id, batch: id };
/** Texts as unlike each other as those of a kind can be. */
const texts: { readonly [Most in 'least' | 'greatest']: Readonly<Record<TextKind, string>> } = {
  least: { day: '"1970-01-01"', person: 'null', tray: noFacts },
  greatest: { day: '"2199-12-31"', person: `"${id}"`, tray: JSON.stringify(longFacts) },
};

/**
 * Judges forms: whether every event of a form is sound whose numbers lie between `least` and `greatest` and whose texts are
 * sound (`soundTexts`). The parts of an event are right or wrong on their own: what lies between two that are right is right.
 */
export function soundForms({ judge, greatest }: { judge: JudgeParts; greatest: Numbers }) {
  const known = new Map<string, boolean>();
  const asFilled = (form: string, values: Numbers & Readonly<Record<TextKind, string>>) =>
    filled(form, (hole) => ('kind' in hole ? String(values[hole.kind]) : nameIn(values.tray)));

  function isSound(form: string): boolean {
    const most = asFilled(form, { ...greatest, ...texts.greatest });
    return (
      // A hole where none is cut could hold what was never judged.
      cutEvent(most as object).form === form &&
      judge(most) === null &&
      judge(asFilled(form, { ...least, ...texts.least })) === null
    );
  }

  return (form: string): boolean => {
    const sound = known.get(form) ?? (form.length <= longestForm && isSound(form));
    known.set(form, sound);
    return sound;
  };
}
