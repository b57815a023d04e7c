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
export function actOfKey(keys: Readonly<Record<BenchAct, string>>, key: string): BenchAct | undefined {
  return benchActs.find((act) => keys[act] === key);
}
