import { signal } from '@preact/signals';

const placeNames = ['bench', 'trays', 'stores', 'yield', 'plan', 'day', 'shelf', 'set-up'] as const;
export type PlaceName = (typeof placeNames)[number];

/** Where in the app one is: a place and what is open in it, kept in the hash so that any host path will do. */
export interface Address {
  readonly place: PlaceName;
  readonly rest: readonly string[];
}

/** Reads the hash of a location; anything unknown is the bench. */
export function readAddress(hash: string): Address {
  const [name, ...rest] = hash.replace(/^#\/?/, '').split('/').filter(Boolean).map(decode);
  const place = placeNames.find((each) => each === name);
  return place ? { place, rest } : { place: 'bench', rest: [] };
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

export function hrefOf(place: PlaceName, ...rest: readonly string[]): string {
  return `#/${[place, ...rest.map(encodeURIComponent)].join('/')}`;
}

export const address = signal<Address>(readAddress(location.hash));
addEventListener('hashchange', () => {
  address.value = readAddress(location.hash);
});

const isBare = () => location.hash.length < 3;
let openedBare = isBare();

/**
 * Goes to a stage when the app was opened without saying where, in the place of the bare address; null stays. Only the first
 * call does anything: whoever goes back to the choice of stages is not sent away again.
 */
export function startAt(stage: string | null): void {
  if (openedBare && stage !== null && isBare()) {
    history.replaceState(null, '', hrefOf('bench', stage));
    address.value = readAddress(location.hash);
  }
  openedBare = false;
}

export function goTo(place: PlaceName, ...rest: readonly string[]): void {
  location.hash = hrefOf(place, ...rest);
}
