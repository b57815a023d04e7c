/** The books of a chaos run: what a script tapped, what the screen acknowledged, and what the log holds afterwards. */

/** What one tap amounts to, as the log names it. */
export type TapKind = 'pass' | 'undo' | 'mended' | 'scrapped';

/** By how much the count of the stage changes: what is undone here always took a piece off the tray. */
export const deltaOf: Readonly<Record<TapKind, number>> = { pass: -1, mended: -1, scrapped: -1, undo: 1 };

/** One event of the log: its identity, its text as it was written, and the tap that it stands for, if any. */
export interface Held {
  readonly key: string;
  readonly text: string;
  readonly tap: TapKind | null;
}

export interface Tap {
  readonly kind: TapKind;
  /** The screen said that it is saved. */
  acknowledged: boolean;
}

export interface Verdict {
  readonly lost: number;
  readonly doubled: number;
}

/**
 * Compares what the log holds `now` with what it held `before` and with the taps in between, in their order. Lost is
 * an event that was there and is not, or is not what it was, and an acknowledged tap that has no event. Doubled is an
 * event that no tap accounts for. A tap that was not acknowledged may have one event, or none.
 */
export function judgeTaps({
  before,
  now,
  taps,
}: {
  before: readonly Held[];
  now: readonly Held[];
  taps: readonly Tap[];
}): Verdict {
  const texts = new Map(now.map(({ key, text }) => [key, text]));
  const missing = before.filter(({ key, text }) => texts.get(key) !== text).length;
  const known = new Set(before.map(({ key }) => key));
  const added = now.filter(({ key }) => !known.has(key)).flatMap(({ tap }) => tap ?? []);
  const acknowledged = taps.filter((tap) => tap.acknowledged).map(({ kind }) => kind);
  return {
    lost: missing + acknowledged.length - longestCommon(acknowledged, added),
    doubled: now.length - texts.size + excess(added, taps),
  };
}

/** How many of `added` are more, kind by kind, than was tapped. */
function excess(added: readonly TapKind[], taps: readonly Tap[]): number {
  const left = new Map<TapKind, number>();
  for (const kind of added) left.set(kind, (left.get(kind) ?? 0) + 1);
  for (const { kind } of taps) left.set(kind, (left.get(kind) ?? 0) - 1);
  return [...left.values()].reduce((sum, count) => sum + Math.max(0, count), 0);
}

/** Length of the longest sequence that both contain in this order. */
function longestCommon(a: readonly TapKind[], b: readonly TapKind[]): number {
  let row = new Array<number>(b.length + 1).fill(0);
  for (const item of a) {
    const next = [0];
    for (let j = 0; j < b.length; j += 1) {
      const kept = Math.max(row[j + 1] ?? 0, next[j] ?? 0);
      next.push(item === b[j] ? (row[j] ?? 0) + 1 : kept);
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
