import * as v from 'valibot';
import { stageId, trayId } from './ids.ts';
import { keyOf } from './key.ts';

export const gradeSchema = v.picklist(['first', 'second']);
/** Grade of a piece. A second still goes through the rest of the route. */
export type Grade = v.InferOutput<typeof gradeSchema>;

/** The longest time that may be spared, minutes: two years. */
export const mostSpare = 2 * 366 * 24 * 60;
const time = v.pipe(v.number(), v.safeInteger(), v.minValue(0));

/**
 * Where a piece can be. `redo` names the stage that sent the piece back: until it has left that stage
 * again, its visits are repeats and do not count towards first-pass yield. `ready` is when a cure ends, ms UTC.
 */
export const placeSchema = v.variant('at', [
  v.object({ at: v.literal('waiting'), stage: stageId, grade: gradeSchema, redo: v.nullable(stageId) }),
  v.object({
    at: v.literal('held'),
    stage: stageId,
    grade: gradeSchema,
    redo: v.nullable(stageId),
    ready: time,
    /** Whole minutes before `ready` from which pieces may be taken out without being asked about; left out where there are none. */
    spare: v.exactOptional(v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostSpare))),
  }),
  v.object({ at: v.literal('finished'), grade: gradeSchema }),
  v.object({ at: v.literal('scrapped') }),
]);
export type Place = Readonly<v.InferOutput<typeof placeSchema>>;
export type StagePlace = Extract<Place, { at: 'waiting' | 'held' }>;

export const mostPieces = 9999;
export const piecesSchema = v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(mostPieces));

/**
 * `pieces` of a tray go from one place to another; null stands for outside the tray. `since` (ms UTC) is when
 * the moving pieces had come to `from`, or to the other tray that they come from, on average: carrying it
 * keeps the age at a stage a plain sum.
 */
export const moveSchema = v.object({
  tray: trayId,
  from: v.nullable(placeSchema),
  to: v.nullable(placeSchema),
  /** No upper bound: trays that were joined can hold more than one act may name. */
  pieces: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  since: v.nullable(time),
});
export type Move = Readonly<v.InferOutput<typeof moveSchema>>;

/** A place as one string, the same for equal places. */
export function placeKey(place: Place): string {
  switch (place.at) {
    case 'waiting':
      return keyOf(keyOf('w', place.stage), keyOf(place.grade, place.redo ?? ''));
    case 'held':
      return `h|${place.stage}|${place.grade}|${place.redo ?? ''}|${place.ready}${place.spare ? `|${place.spare}` : ''}`;
    case 'finished':
      return keyOf('f', place.grade);
    case 'scrapped':
      return 's';
  }
}

/** From when on (ms UTC) pieces of a hold may be taken out without being asked about. */
export const leastOf = ({ ready, spare = 0 }: { readonly ready: number; readonly spare?: number }): number =>
  ready - spare * 60_000;

export function atStage(place: Place): place is StagePlace {
  return place.at === 'waiting' || place.at === 'held';
}
