import type { StationId } from '../log/ids.ts';
import { largestIn } from './column.ts';
import { eventTexts } from './event-texts.ts';
import { type OddRows, oddRows } from './odd-rows.ts';
import type { PackedRun } from './packed-run.ts';
import type { Numbers } from './read-values.ts';
import { formOfShape, ofColumn } from './shape.ts';
import { soundForms } from './sound-forms.ts';
import { type JudgeParts, soundTexts } from './sound-texts.ts';

/** What there is to know of a sound run without opening it: the latest wall time of its stamps, ms UTC. */
export interface SoundRun {
  readonly newest: number;
}

/**
 * Judges runs from outside by what their events have in common: each form once, each text of the dictionaries once, and
 * numbers by their bounds. The few events that cannot be told so are judged themselves. Undefined for a run with one that is
 * not sound, or that its columns do not hold as they ought to. The chain is not looked at. Never throws.
 * @param greatest a run with numbers beyond these is not sound
 */
export function soundRuns({ judge, greatest }: { judge: JudgeParts; greatest: Numbers }) {
  const isSoundForm = soundForms({ judge, greatest });
  const nameOf = soundTexts(judge);

  /** The latest wall time among events that are judged themselves; undefined when one is not sound. */
  function newestOf(run: PackedRun, { rows }: OddRows): number | undefined {
    let newest = 0;
    for (const { at, text } of eventTexts(run, (row) => rows.has(row))) {
      const event = JSON.parse(text) as Own;
      const isOwn = event.station === run.station && event.seq === run.first + at;
      if (!isOwn || JSON.stringify(event) !== text || judge(event) !== null) return undefined;
      newest = Math.max(newest, event.stamp?.wall ?? 0);
    }
    return newest;
  }

  return (run: PackedRun): SoundRun | undefined => {
    try {
      if (!areNumbersWithin(run, greatest)) return undefined;
      const begins = beginningOf(run.station);
      const isSoundShape = (shape: string) => shape.startsWith(begins) && isSoundForm(formOfShape(shape));
      const odd = oddRows(run, { isSoundShape, nameOf, greatest });
      const newest = odd && (odd.rows.size === 0 ? 0 : newestOf(run, odd));
      return newest === undefined ? undefined : { newest: Math.max(newest, odd?.newest ?? 0) };
    } catch {
      return undefined;
    }
  };
}

interface Own {
  readonly station: string;
  readonly seq: number;
  readonly stamp?: { readonly wall?: number };
}

/** How an event begins that a run holds as it ought to: its number is its place in the run, and its stamp stands next to it. */
const beginningOf = (station: StationId) => `{"station":"${station}","seq":${ofColumn.seq},"stamp":{"wall":`;

function areNumbersWithin({ base, first, entries, columns }: PackedRun, greatest: Numbers): boolean {
  return (
    first + entries - 1 <= greatest.seq &&
    base + largestIn(columns.wall) <= Math.min(greatest.wall, greatest.time) &&
    base >= largestIn(columns.time) &&
    largestIn(columns.tick) <= greatest.tick &&
    largestIn(columns.elapsed) <= greatest.elapsed
  );
}
