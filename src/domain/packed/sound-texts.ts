import * as v from 'valibot';
import { trayFactsSchema } from '../log/event.ts';
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

/** Facts of a tray as this app writes them: its id, its code (if nothing in it has to be escaped), and the rest. */
const trayFacts = /^\{"tray":"([a-z0-9-]+)","code":"([ !#-[\]-~]*)",(.+)\}$/;
const { tray: trayId, code: trayCode } = trayFactsSchema.entries;

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

  /** What facts of trays say besides which tray it is: a shop has few of them. */
  const rests = new Set<string>();

  function isSound(kind: TextKind, json: string): boolean {
    if (json.length > longest || !flat.test(json)) return false;
    const [, tray, code, rest] = (kind === 'tray' && trayFacts.exec(json)) || [];
    if (rest !== undefined && rests.has(rest)) return v.is(trayId, tray) && v.is(trayCode, code);
    try {
      const value: unknown = JSON.parse(json);
      const sound = JSON.stringify(value) === json && judge({ ...plain, [fields[kind]]: value }) === null;
      if (sound && rest !== undefined) rests.add(rest);
      return sound;
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
