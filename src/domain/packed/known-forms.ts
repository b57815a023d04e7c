import type { StationId } from '../log/ids.ts';
import type { Cut } from './cut-event.ts';
import { formTree } from './form-tree.ts';
import { type Numbers, valueReader } from './read-values.ts';
import { ofColumn } from './shape.ts';
import { least, longestForm, soundForms } from './sound-forms.ts';
import { type JudgeParts, soundTexts } from './sound-texts.ts';
import type { TextEntry } from './text-entry.ts';

/** Forms of events that were found sound: by them many an event is told without being parsed and judged itself. */
export interface KnownForms {
  /**
   * Tells an event that is sound and, to the letter, the JSON that its station wrote: of a known form, with values that may
   * stand in it. Undefined for one that has to be judged itself.
   */
  readonly tell: (text: string) => Pick<TextEntry, 'station' | 'seq' | 'wall' | 'cut'> | undefined;
  /** Takes note of an event that was found sound. */
  readonly learn: (cut: Cut) => void;
}

/** Longer events are none that a shop has thousands of, and forms beyond so many neither. */
const longest = longestForm;
const mostForms = 4096;

/** How an event of ours begins: its own number and stamp are the first that are cut out of it. */
const beginning = new RegExp(
  `^\\{"station":"([a-z0-9-]+)","seq":${ofColumn.seq},"stamp":\\{"wall":${ofColumn.wall},"tick":${ofColumn.tick}\\},`,
);

/** @param greatest an event with a number beyond these is judged itself */
export function knownForms({ judge, greatest }: { judge: JudgeParts; greatest: Numbers }): KnownForms {
  const forms = formTree<{ readonly form: string; readonly station: StationId }>();
  const isSound = soundForms({ judge, greatest });
  const mayStand = { least, greatest, nameOf: soundTexts(judge) };
  /** Forms that were met once: a note, for instance, does not come again. */
  const once = new Set<string>();
  const tried = new Set<string>();

  return {
    tell(text) {
      if (text.length > longest) return undefined;
      const { values, readHole } = valueReader(text, mayStand);
      const found = forms.find(text, readHole);
      if (!found) return undefined;
      const { form, station } = found;
      return { station, seq: Number(values[0]), wall: Number(values[1]), cut: { form, values } };
    },
    learn({ form }) {
      const station = beginning.exec(form)?.[1];
      if (station === undefined || form.length > longest || tried.has(form) || tried.size === mostForms)
        return;
      if (once.size === mostForms) once.clear();
      if (!once.delete(form)) {
        once.add(form);
        return;
      }
      tried.add(form);
      if (isSound(form)) forms.add(form, { form, station: station as StationId });
    },
  };
}
