import { type BenchAct, benchActs, type StationFact } from '../domain/set-up/facts.ts';

/** The keys of a number pad or foot switch as they come, by `event.key`. */
export const usualKeys: Readonly<Record<BenchAct, string>> = {
  pass: '1',
  'flaw-1': '2',
  'flaw-2': '3',
  'flaw-3': '4',
  'flaw-4': '5',
  'flaw-5': '6',
  'flaw-6': '7',
  next: '8',
  undo: 'Backspace',
  pause: '0',
};

/** The key of each act on a station: the one it was taught, or the usual one. */
export function keysOf(station: Pick<StationFact, 'keys'> | undefined): Readonly<Record<BenchAct, string>> {
  const taught = Object.fromEntries(station?.keys.map(({ act, key }) => [act, key]) ?? []);
  return { ...usualKeys, ...taught };
}

/** The act that already has a key, if any: one key does one thing. */
function actOfKey(keys: Readonly<Record<BenchAct, string>>, key: string): BenchAct | undefined {
  return benchActs.find((act) => keys[act] === key);
}

/** What comes of teaching an act a key. */
export type Lesson =
  | { readonly kind: 'taught'; readonly keys: StationFact['keys'] }
  /** The key does another act already. */
  | { readonly kind: 'taken'; readonly by: BenchAct }
  /** Enter and space press the button that has the focus: one of the two has to be left to do so. */
  | { readonly kind: 'needed' }
  /** A key that the browser needs, or that only goes with others: it cannot be taught. */
  | { readonly kind: 'unfit' };

const longestKey = 32;
const pressing: ReadonlySet<string> = new Set(['Enter', ' ']);

/** Keys that move the focus, close sheets or belong to the browser and the system; pedals may send F13 and on. */
const unfit =
  /^(Tab|Escape|Shift|Control|Alt|AltGraph|Meta|OS|Fn|FnLock|Hyper|Super|CapsLock|NumLock|ScrollLock|Symbol|SymbolLock|ContextMenu|Dead|Process|Unidentified|F([1-9]|1[0-2])|Browser.*|Power|WakeUp)$/;

/** Teaches one act of a station a key, by `event.key`. One key does one thing, so a double is refused. */
export function teachKey(
  station: Pick<StationFact, 'keys'>,
  { act, key }: { act: BenchAct; key: string },
): Lesson {
  if (unfit.test(key) || key.length === 0 || key.length > longestKey) return { kind: 'unfit' };
  const by = actOfKey(keysOf(station), key);
  if (by && by !== act) return { kind: 'taken', by };
  const others = station.keys.filter((each) => each.act !== act);
  if (others.some((each) => pressing.has(each.key)) && pressing.has(key)) return { kind: 'needed' };
  return { kind: 'taught', keys: key === usualKeys[act] ? others : [...others, { act, key }] };
}
