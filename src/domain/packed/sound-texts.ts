import { nameIn } from './event-texts.ts';
import { noFacts } from './sample-event.ts';
import type { TextKind } from './shape.ts';

/** What is wrong with an event; null when nothing is. Each part of it is right or wrong on its own. */
export type JudgeParts = (event: unknown) => string | null;

/** An event in which any text can be judged: nothing else about it is of note. */
const plain = {
  ...{ station: 'a', seq: 1, stamp: { wall: 0, tick: 0 }, zone: { name: '', offset: 0 } },
  ...{ day: '1970-01-01', person: null, kind: 'hold-begun' },
  ...{ of: JSON.parse(noFacts), moves: [], stage: 'a', elapsed: null },
};
const fields = { day: 'day', person: 'person', tray: 'of' } as const satisfies Record<
  TextKind,
  keyof typeof plain
>;

/** Texts in which nothing nests, nor seems to. */
const flat = /^\{?[^[\]{}]*\}?$/;

/** Longer texts are not kept, and no more of a kind than this at a time. */
const longest = 512;
const most = 16_384;

/**
 * Tells texts (JSON) that may stand wherever an event has a text of their kind, each by its name: of facts that is the id of
 * the tray as JSON, else the text itself.
 */
export type SoundTexts = (kind: TextKind, json: string) => string | undefined;

export function soundTexts(judge: JudgeParts): SoundTexts {
  const names = {
    day: new Map<string, string>(),
    person: new Map<string, string>(),
    tray: new Map<string, string>(),
  };

  function isSound(kind: TextKind, json: string): boolean {
    if (json.length > longest || !flat.test(json)) return false;
    try {
      const value: unknown = JSON.parse(json);
      return JSON.stringify(value) === json && judge({ ...plain, [fields[kind]]: value }) === null;
    } catch {
      return false;
    }
  }

  return (kind, json) => {
    const known = names[kind].get(json);
    if (known !== undefined || !isSound(kind, json)) return known;
    const name = kind === 'tray' ? nameIn(json) : json;
    if (names[kind].size === most) names[kind].clear();
    names[kind].set(json, name);
    return name;
  };
}
