import { type Hole, isTextKind, type NumberKind, type TextKind } from './shape.ts';
import type { SoundTexts } from './sound-texts.ts';

export type Numbers = Readonly<Record<NumberKind, number>>;

/** What may stand in the holes of an event: numbers from the least to the greatest of their kind, and sound texts. */
interface MayStand {
  readonly least: Numbers;
  readonly greatest: Numbers;
  readonly nameOf: SoundTexts;
}

/** Reads the values in the text of an event, hole by hole. `readHole` is -1 where none stands that may, else where it ends. */
export function valueReader(text: string, { least, greatest, nameOf }: MayStand) {
  const values: (number | string)[] = [];
  /** The tray that the event is about, as JSON. */
  let tray = '';

  function number(kind: NumberKind, at: number): number {
    const end = endOfNumber(text, at);
    const value = Number(text.slice(at, end));
    if (end === at || value < least[kind] || value > greatest[kind]) return -1;
    values.push(value);
    return end;
  }

  function jsonText(kind: TextKind, at: number): number {
    const end = endOfText(text, at);
    const json = text.slice(at, end);
    const name = nameOf(kind, json);
    if (name === undefined) return -1;
    if (kind === 'tray' && tray === '') tray = name;
    values.push(json);
    return end;
  }

  return {
    values,
    readHole(hole: Hole, at: number): number {
      if (!('kind' in hole)) return tray !== '' && text.startsWith(tray, at) ? at + tray.length : -1;
      return isTextKind(hole.kind) ? jsonText(hole.kind, at) : number(hole.kind, at);
    },
  };
}

const [zero, nine] = [48, 57];

/** Where a whole number from 0 on ends, written as JSON has it. */
function endOfNumber(text: string, at: number): number {
  if (text.charCodeAt(at) === zero) return at + 1;
  let end = at;
  while (text.charCodeAt(end) >= zero && text.charCodeAt(end) <= nine) end += 1;
  return end;
}

/** Where a string ends, or an object without another in it, or null. */
function endOfText(text: string, at: number): number {
  const first = text.charAt(at);
  if (first === 'n') return at + 4;
  return text.indexOf(first === '{' ? '}' : '"', at + 1) + 1;
}
