import type { LogEvent } from '../domain/log/read-event.ts';
import { noFacts, sampleEvent } from '../domain/packed/sample-event.ts';
import { ofColumn } from '../domain/packed/shape.ts';
import { type Subject, subjectsOf } from './event-record.ts';

/**
 * What all events of a shape are about, besides trays that stand in the dictionary of their run: parts, and the trays of an
 * event that could not be taken apart and is a shape of its own.
 */
export function subjectsOfShape(shape: string): readonly Subject[] {
  return shape.includes(ofColumn.tray) ? [] : subjectsOf(sampleEvent(shape, noFacts) as LogEvent);
}
