import { type NumberKind, ofColumn, sameTrayMark, type TextKind } from './shape.ts';

/**
 * An event cut into what thousands have in common and what is its own. Its form is its JSON with the mark of a column
 * wherever a value was cut out, and with that of the same tray; `values` are those that were cut out, in the order of the
 * text: numbers, and texts as JSON.
 */
export interface Cut {
  readonly form: string;
  readonly values: readonly (number | string)[];
}

/** Numbers by the name that they have in an event. */
const numberNames: ReadonlyMap<string, NumberKind> = new Map([
  ['seq', 'seq'],
  ['wall', 'wall'],
  ['tick', 'tick'],
  ['elapsed', 'elapsed'],
  ['since', 'time'],
  ['ready', 'time'],
]);
/** Texts and facts by the name that they have in an event. */
const textNames: ReadonlyMap<string, TextKind> = new Map([
  ['day', 'day'],
  ['person', 'person'],
  ['of', 'tray'],
  ['into', 'tray'],
]);

/** Cuts an event, given as what its JSON parses to. Works on any JSON: what is not known by name stays in the form. */
export function cutEvent(event: object): Cut {
  const values: (number | string)[] = [];
  let facts: { readonly tray?: unknown } | undefined;

  function cutOut(kind: NumberKind | TextKind, value: number | string): string {
    values.push(value);
    return ofColumn[kind];
  }

  function member(name: string, value: unknown): string {
    const numberKind = numberNames.get(name);
    if (numberKind && isPlainNumber(value)) return cutOut(numberKind, value);
    if (name === 'tray' && value !== undefined && value === facts?.tray) return sameTrayMark;
    const textKind = textNames.get(name);
    // Facts of a tray are an object, other texts are none.
    if (!textKind || value === undefined || isObject(value) !== (textKind === 'tray')) return written(value);
    if (textKind === 'tray') facts ??= value as object;
    return cutOut(textKind, JSON.stringify(value));
  }

  function written(value: unknown): string {
    if (Array.isArray(value)) return `[${value.map((item) => written(item)).join(',')}]`;
    if (!isObject(value)) return JSON.stringify(value) ?? 'null';
    const members = Object.entries(value).filter(([, part]) => part !== undefined);
    return `{${members.map(([name, part]) => `${JSON.stringify(name)}:${member(name, part)}`).join(',')}}`;
  }

  return { form: written(event), values };
}

function isPlainNumber(value: unknown): value is number {
  return Number.isSafeInteger(value) && (value as number) >= 0;
}

function isObject(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
