import { type Hole, piecesOf } from './shape.ts';

/**
 * An event of a shape, about a tray with these facts (JSON). What stands in its other holes is made up: times and
 * numbers are 1, days the first of 1970, nobody the person.
 */
export function sampleEvent(shape: string, facts: string): unknown {
  const tray = JSON.stringify((JSON.parse(facts) as { tray?: unknown }).tray) ?? 'null';
  return filled(shape, (hole) => {
    if (hole.from === 'now') return '1';
    if (hole.from === 'same-tray') return tray;
    if (hole.kind === 'tray') return facts;
    if (hole.kind === 'day') return '"1970-01-01"';
    return hole.kind === 'person' ? 'null' : '1';
  });
}

/** An event of a shape, given what stands in its holes (JSON). */
export function filled(shape: string, filling: (hole: Hole) => string): unknown {
  const { texts, holes } = piecesOf(shape);
  return JSON.parse(texts.reduce((text, piece, at) => text + filling(holes[at - 1] as Hole) + piece));
}

/** What stands for the tray of an event that is about none. */
export const noFacts = '{"tray":"none","code":"","variant":"none","species":"none","batch":"none"}';
