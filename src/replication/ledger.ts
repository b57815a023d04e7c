import type { RunHead } from '../domain/packed/packed-run.ts';
import { type Look, laneKey, type Placed } from './exchange.ts';
import type { Said } from './message.ts';

interface Line extends Pick<Placed, 'at' | 'seat' | 'lane' | 'head'> {
  /** Null for what could not be opened. */
  readonly kind: Said['kind'] | null;
  /** The entries in it; null for none, or for none that can be read. */
  readonly brings: RunHead | null;
}

/** What the broker was seen to hold: the head of every message there. Bodies may still turn out to be unreadable. */
export interface Ledger {
  /**
   * Notes a message that was read; what was there before on its lane goes when it replaces that. False when the same one
   * stands elsewhere.
   */
  readonly note: (placed: Placed, said: Said | null) => boolean;
  /** Notes a message that was put there and not read yet: up to it, others may not have been either. */
  readonly noteSent: (placed: Placed, said: Said) => void;
  /** The message there brings nothing after all. */
  readonly strike: (at: number) => void;
  /** The heads of all entries there, and where each stands. */
  readonly heads: () => ReadonlyMap<RunHead, number>;
  /** What stands on one lane, in order. */
  readonly lane: (of: { seat: string; lane: string }) => readonly Line[];
  /** The tablet that has a seat, by the last word on it. */
  readonly takenBy: (seat: string) => string | undefined;
  /** How far it was read. */
  readonly last: () => number;
  /** It was read so far, whether or not the last message there still stands. */
  readonly readTo: (at: number) => void;
  /** The last message that was noted. */
  readonly lastLine: () => Line | undefined;
  /** What stands there, if it was noted. */
  readonly at: (at: number) => Line | undefined;
  /** Whether a broker that says this can be the one that was read, nothing of it missing, as far as it was read. */
  readonly agreesWith: (look: Look) => boolean;
}

export function openLedger(created: string): Ledger {
  const lines = new Map<number, Line>();
  const byHead = new Map<string, number>();
  const claims = new Map<string, string>();
  let last = 0;
  const strike = (at: number) => {
    const line = lines.get(at);
    if (line) lines.set(at, { ...line, brings: null });
  };
  const linesOf = (of: { seat: string; lane: string }) =>
    [...lines.values()].filter((line) => laneKey(line) === laneKey(of)).sort((a, b) => a.at - b.at);
  function note(placed: Placed, said: Said | null): boolean {
    const { at, seat, lane, head } = placed;
    if (placed.replaces) for (const line of linesOf(placed)) if (line.at < at) lines.delete(line.at);
    const before = byHead.get(head);
    const isNew = before === undefined || before === at;
    if (isNew) byHead.set(head, at);
    const known = lines.get(at)?.head === head ? lines.get(at) : undefined;
    const brings = said?.kind === 'log1' || said?.kind === 'pack1' ? said.head : null;
    lines.set(at, known ?? { at, seat, lane, head, kind: said?.kind ?? null, brings: isNew ? brings : null });
    if (said?.kind === 'seat1') claims.set(seat, said.tablet);
    if (said?.kind === 'want1')
      for (const line of lines.values())
        if (line.at < at && line.brings && isSameRun(line.brings, said.head)) strike(line.at);
    return isNew;
  }
  return {
    note(placed, said) {
      last = Math.max(last, placed.at);
      return note(placed, said);
    },
    noteSent: note,
    strike,
    heads: () => {
      const found = new Map<string, readonly [RunHead, number]>();
      for (const { brings, at } of lines.values())
        if (brings) found.set(`${brings.link}:${brings.first}`, [brings, at]);
      return new Map(found.values());
    },
    lane: linesOf,
    takenBy: (seat) => claims.get(seat),
    last: () => last,
    readTo: (at) => {
      last = Math.max(last, at);
    },
    lastLine: () => lines.get([...lines.keys()].reduce((most, at) => Math.max(most, at), 0)),
    at: (at) => lines.get(at),
    agreesWith(look) {
      if (look.created !== created || look.last !== last) return false;
      const counted = new Map<string, number>();
      for (const line of lines.values()) counted.set(laneKey(line), (counted.get(laneKey(line)) ?? 0) + 1);
      return (
        counted.size === look.counts.size &&
        [...counted].every(([lane, count]) => look.counts.get(lane) === count)
      );
    },
  };
}

function isSameRun(a: RunHead, b: RunHead): boolean {
  return a.link === b.link && a.first === b.first;
}
