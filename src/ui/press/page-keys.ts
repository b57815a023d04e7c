/**
 * Keys that the page itself answers to, wherever the focus is. They are heard before any button, so that one press of a
 * pedal never does two things; what is remembered of them outlives the screens, so that a key held from one screen to the
 * next counts once.
 */
import { isDeafNow } from './deafness.ts';
import { lastBackInView } from './fingers.ts';
import { hearKey, type KeyMemory, unheard } from './key-rules.ts';
import { pressLimits } from './press-rules.ts';

export interface KeyTaker {
  /** Whether this key is for it. */
  readonly takes: (key: string) => boolean;
  readonly act: (key: string) => void;
  /** It ends something: deaf for 700 ms after an act. */
  readonly closing?: boolean | undefined;
}

const takers = new Set<KeyTaker>();
/** Keys that are down and were taken: no button hears of their going up. */
const taken = new Set<string>();
let memory: KeyMemory = unheard;
/** Presses that count when no other pulse follows. */
const pending = new Map<string, ReturnType<typeof setTimeout>>();
/** When a key that ends something last acted. */
const closedAt = new Map<string, number>();
let watching = false;

const within = (at: number, since: number | undefined, ms: number): boolean =>
  since !== undefined && at - since < ms;

const takerOf = ({ key, target, ctrlKey, metaKey, altKey }: KeyboardEvent): KeyTaker | undefined => {
  if (ctrlKey || metaKey || altKey || isElsewhere(target)) return undefined;
  // A question that came up last is asked before what it stands on.
  return [...takers].findLast(({ takes }) => takes(key));
};

const hearDown = (event: KeyboardEvent): void => {
  const { key, timeStamp: at, repeat } = event;
  const heard = hearKey(memory, { kind: 'down', key, at, repeat });
  memory = heard.memory;
  // A key that repeats is held: no other pulse has come, and its press counts.
  if (!repeat) clearTimeout(pending.get(key));
  const taker = takerOf(event);
  if (!taker) return;
  keepFromButtons(event);
  taken.add(key);
  const isDeaf =
    isDeafNow() ||
    within(at, lastBackInView(), pressLimits.wakeDeafMs) ||
    (taker.closing && within(at, closedAt.get(key), pressLimits.closingDeafMs));
  if (heard.counts === 'no' || isDeaf) return;
  const act = (): void => {
    // Its screen may have gone while it was waited for another pulse.
    if (!takers.has(taker)) return;
    if (taker.closing) closedAt.set(key, at);
    taker.act(key);
  };
  if (heard.counts === 'yes') act();
  else pending.set(key, setTimeout(act, pressLimits.bounceMs));
};

const hearUp = (event: KeyboardEvent): void => {
  const { key, timeStamp: at } = event;
  ({ memory } = hearKey(memory, { kind: 'up', key, at }));
  if (taken.delete(key)) keepFromButtons(event);
};

const keepFromButtons = (event: KeyboardEvent): void => {
  event.preventDefault();
  event.stopPropagation();
};

/** A key typed into a field, or while a sheet is laid over the page, is not for the page. */
const isElsewhere = (target: EventTarget | null): boolean =>
  (target instanceof Element && target.closest('input, textarea, select') !== null) ||
  document.querySelector('dialog[open], [role=alertdialog]') !== null;

/** Lets `taker` have the keys that it takes, until the returned function is called. */
export const takeKeys = (taker: KeyTaker): (() => void) => {
  if (!watching) {
    watching = true;
    // Before every button, but behind what listens at the window: a code reader types, too.
    document.addEventListener('keydown', hearDown, { capture: true });
    document.addEventListener('keyup', hearUp, { capture: true });
  }
  takers.add(taker);
  return () => takers.delete(taker);
};
