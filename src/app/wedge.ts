import { mayBecomeLabel, typedLabel } from '../domain/label/typed-label.ts';

/** A key that went down or up; `at` in ms of a clock that never goes back. */
export interface WedgeKey {
  readonly key: string;
  readonly at: number;
}

/**
 * What a code reader that types like a keyboard may be in the midst of. Nothing acts on the keys that are held back
 * until it shows whether a reader typed them.
 */
export interface Wedge {
  /** The signs that belong together so far; empty while nothing is coming. */
  readonly text: string;
  readonly since: number;
  readonly last: number;
  readonly held: readonly WedgeKey[];
}

/** What is to be done at a key or after a while. */
export interface WedgeStep {
  readonly wedge: Wedge;
  /** Keys that were held back and now act, in their order, before the key itself. */
  readonly released: readonly WedgeKey[];
  /** Whether the key itself acts; one that does not is held back, or was the end of what was read. */
  readonly acts: boolean;
  /** The text that a reader has typed. */
  readonly read?: string;
}

export const noWedge: Wedge = {
  text: '',
  since: Number.NEGATIVE_INFINITY,
  last: Number.NEGATIVE_INFINITY,
  held: [],
};

/**
 * The longest pause within a burst (ms). Readers mean a few milliseconds; on a busy tablet 13 to 206 ms were measured
 * between keys of one that meant 5.
 */
export const longestPause = 250;
/** No hand presses two keys within so many ms and means both one after the other: signs as close as this are a reader's. */
const machinePause = 35;
/** A hand keeps a key down for longer (ms); a reader presses and lifts at once. */
const shortestDwell = 30;
/** A burst of so many signs that is no label was some other code: its keys do nothing. */
const fewestForeign = 6;
/** Pause between its signs (ms), in the mean, that a burst in a field must stay below: nobody types a label's text, or a bare code, as fast. */
const meanInField = { label: 80, code: 40 };

const endKeys: ReadonlySet<string> = new Set(['Enter', 'Tab']);
const shiftKeys: ReadonlySet<string> = new Set(['Shift', 'CapsLock']);
const isSign = (key: string) => key.length === 1 && key !== ' ';

function meanPause({ text, since, last }: Pick<Wedge, 'text' | 'since' | 'last'>): number {
  return text.length > 1 ? (last - since) / (text.length - 1) : Number.POSITIVE_INFINITY;
}

/** Hears a key that is pressed where no text is written. Held repeats and keys with Ctrl, Alt or Meta are not for it. */
export function hear(wedge: Wedge, key: WedgeKey): WedgeStep {
  const pause = key.at - wedge.last;
  if (shiftKeys.has(key.key)) return { wedge, released: [], acts: true };
  if (endKeys.has(key.key) && pause <= longestPause) {
    const label = typedLabel(wedge.text)?.text;
    const isForeign = wedge.held.length >= fewestForeign && meanPause(wedge) <= machinePause;
    const read = label ?? (isForeign ? wedge.text : undefined);
    if (read !== undefined) return { wedge: noWedge, released: [], acts: false, read };
  }
  if (!isSign(key.key)) return { wedge: noWedge, released: wedge.held, acts: true };
  const text = wedge.text + key.key;
  if (pause <= machinePause || (wedge.text !== '' && pause <= longestPause && mayBecomeLabel(text))) {
    const since = wedge.text === '' ? key.at : wedge.since;
    return {
      wedge: { text, since, last: key.at, held: [...wedge.held, key] },
      released: [],
      acts: false,
    };
  }
  if (!mayBecomeLabel(key.key))
    return { wedge: { ...noWedge, last: key.at }, released: wedge.held, acts: true };
  const begun: Wedge = { text: key.key, since: key.at, last: key.at, held: [key] };
  return { wedge: begun, released: wedge.held, acts: false };
}

/** Hears a key that is lifted: a first letter that a hand has pressed acts then; what follows it may still be a burst. */
export function lifted(wedge: Wedge, { key, at }: WedgeKey): WedgeStep {
  const [first] = wedge.held;
  const byHand = wedge.text.length === 1 && first?.key === key && at - first.at >= shortestDwell;
  return byHand
    ? { wedge: { ...wedge, held: [] }, released: wedge.held, acts: true }
    : { wedge, released: [], acts: true };
}

/** Says at a later time that no key has come: what was held back acts, for no reader pauses for so long. */
export function waited(wedge: Wedge, at: number): WedgeStep {
  if (at - wedge.last < longestPause) return { wedge, released: [], acts: true };
  return { wedge: noWedge, released: wedge.held, acts: true };
}

/** What is known of keys in a text field: they are never held back, only watched. */
export type FieldWatch = Pick<Wedge, 'text' | 'since' | 'last'>;

/**
 * Hears a key that is pressed in a text field. `begins`: what the field holds before this key is what it must hold
 * again when the burst is over.
 */
export function hearInField(
  watch: FieldWatch,
  { key, at }: WedgeKey,
): { readonly watch: FieldWatch; readonly begins: boolean; readonly read?: string } {
  if (shiftKeys.has(key)) return { watch, begins: false };
  const isSoon = at - watch.last <= longestPause;
  if (endKeys.has(key) && isSoon) {
    const found = typedLabel(watch.text);
    if (found && meanPause(watch) <= meanInField[found.kind])
      return { watch: noWedge, begins: false, read: found.text };
  }
  const text = watch.text + key;
  if (!isSign(key)) return { watch: noWedge, begins: false };
  if (watch.text !== '' && isSoon && mayBecomeLabel(text))
    return { watch: { ...watch, text, last: at }, begins: false };
  return mayBecomeLabel(key)
    ? { watch: { text: key, since: at, last: at }, begins: true }
    : { watch: noWedge, begins: false };
}
