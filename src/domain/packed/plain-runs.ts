import type { StationId } from '../log/ids.ts';
import { largestIn } from './column.ts';
import type { PackedRun } from './packed-run.ts';
import type { Numbers } from './read-values.ts';
import {
  formOfShape,
  type HoleKind,
  isTextKind,
  ofColumn,
  type Pieces,
  piecesOf,
  textKinds,
} from './shape.ts';
import { least, soundForms } from './sound-forms.ts';
import { type JudgeParts, soundTexts } from './sound-texts.ts';

/**
 * Tells runs from outside of which every event is surely sound, without looking at one: the form of each shape is, each text
 * of the dictionaries is, and all numbers lie within their bounds. False for one that has to be judged entry by entry, sound
 * or not. Its chain is not looked at. Never throws.
 * @param greatest a run with a number beyond these is not told
 */
export function plainRuns({ judge, greatest }: { judge: JudgeParts; greatest: Numbers }) {
  const isSoundForm = soundForms({ judge, greatest });
  const nameOf = soundTexts(judge);

  function hasSoundTexts(run: PackedRun): boolean {
    return textKinds.every((kind) => run[`${kind}s`].every((json) => nameOf(kind, json) !== undefined));
  }

  return (run: PackedRun): boolean => {
    try {
      const begins = beginningOf(run.station);
      const isPlain = run.shapes.every(
        (shape) => shape.startsWith(begins) && isSoundForm(formOfShape(shape)),
      );
      return isPlain && hasSoundTexts(run) && isWithin(run, { shapes: run.shapes.map(piecesOf), greatest });
    } catch {
      return false;
    }
  };
}

/** How the events of a run begin: the number of each is its place in the run, and its stamp stands next to it. */
const beginningOf = (station: StationId) => `{"station":"${station}","seq":${ofColumn.seq},"stamp":{"wall":`;

/** Whether the numbers of a run lie within their bounds, and its indexes within the dictionaries. */
function isWithin(
  run: PackedRun,
  { shapes, greatest }: { shapes: readonly Pieces[]; greatest: Numbers },
): boolean {
  const { base, first, entries, columns } = run;
  const isMissing = (kind: 'day' | 'person' | 'tray') =>
    run[`${kind}s`].length === 0 &&
    shapes.some(({ holes }) => holes.some((hole) => 'kind' in hole && hole.kind === kind));
  const lastIndex = (kind: 'day' | 'person' | 'tray') => Math.max(0, run[`${kind}s`].length - 1);
  return (
    first + entries - 1 <= greatest.seq &&
    base + largestIn(columns.wall) <= Math.min(greatest.wall, greatest.time) &&
    base - largestIn(columns.time) >= least.time &&
    largestIn(columns.tick) <= greatest.tick &&
    largestIn(columns.elapsed) <= greatest.elapsed &&
    textKinds.every((kind) => !isMissing(kind) && largestIn(columns[kind]) <= lastIndex(kind)) &&
    areExtrasWithin(run, { shapes, greatest })
  );
}

function areExtrasWithin(
  run: PackedRun,
  { shapes, greatest }: { shapes: readonly Pieces[]; greatest: Numbers },
): boolean {
  const boundsOf = (kind: HoleKind) =>
    isTextKind(kind)
      ? { from: 0, to: run[`${kind}s`].length - 1 }
      : { from: least[kind], to: greatest[kind] };
  const bounds = shapes.map(({ holes }) =>
    holes.flatMap((hole) => (hole.from === 'extras' ? boundsOf(hole.kind) : [])),
  );
  const { extras, columns, entries } = run;
  let extra = 0;
  for (let at = 0; at < entries; at += 1) {
    const ofShape = bounds[columns.shape[at] ?? -1];
    if (!ofShape) return false;
    for (const { from, to } of ofShape) {
      const value = extras[extra] ?? -1;
      if (!(value >= from && value <= to && Number.isInteger(value))) return false;
      extra += 1;
    }
  }
  return extra === extras.length;
}
