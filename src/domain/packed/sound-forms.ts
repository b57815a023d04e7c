import { cutEvent } from './cut-event.ts';
import { nameIn } from './event-texts.ts';
import type { Numbers } from './read-values.ts';
import { filled } from './sample-event.ts';
import type { TextKind } from './shape.ts';
import type { JudgeParts } from './sound-texts.ts';

/** Longer forms are none that a shop has thousands of. */
export const longestForm = 4096;

/** The least numbers that may stand in an event; by their names alone, whatever else is in it. */
export const least: Numbers = { seq: 1, wall: 0, tick: 0, elapsed: 0, time: 0 };

const id = 'z'.repeat(40);
const facts = { tray: id, code: 'A'.repeat(12), variant: id, species: id, batch: id };
const texts: Readonly<Record<TextKind, string>> = {
  day: '"2199-12-31"',
  person: `"${id}"`,
  tray: JSON.stringify(facts),
};

/**
 * Judges forms: whether every event of a form is sound whose numbers lie between `least` and `greatest` and whose texts are
 * sound (`soundTexts`). The parts of an event are right or wrong on their own, those that are cut out by their name alone: so
 * one event of the form, with the greatest that there is, tells of all.
 */
export function soundForms({ judge, greatest }: { judge: JudgeParts; greatest: Numbers }) {
  const known = new Map<string, boolean>();
  const values = { ...greatest, ...texts };

  function isSound(form: string): boolean {
    const event = filled(form, (hole) =>
      'kind' in hole ? String(values[hole.kind]) : nameIn(values.tray),
    ) as object;
    // A hole where none is cut could hold what was never judged.
    return cutEvent(event).form === form && judge(event) === null;
  }

  return (form: string): boolean => {
    const sound = known.get(form) ?? (form.length <= longestForm && isSound(form));
    known.set(form, sound);
    return sound;
  };
}
