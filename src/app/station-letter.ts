import { readId, type StationId, stationId } from '../domain/log/ids.ts';
import type { StationFact } from '../domain/set-up/facts.ts';
import { factOf, factsOf, type Registers } from '../domain/shop/registers.ts';
import { codeLetters } from '../domain/tray/code-alphabet.ts';
import type { Session } from './session.ts';

/** The first letter that no other station of the shop carries; the first of all when every one is taken. */
function freeLetter(registers: Registers, station: string): string {
  const taken = new Set(
    factsOf(registers, 'station')
      .filter(({ id }) => id !== station)
      .map(({ fact }) => fact.letter),
  );
  return [...codeLetters].find((letter) => !taken.has(letter)) ?? codeLetters.charAt(0);
}

/** What this station is called; a station that is not named yet gets a free letter. */
export function stationFactOf(
  registers: Registers,
  { station, name }: { station: StationId; name: (letter: string) => string },
): StationFact {
  const letter = freeLetter(registers, station);
  return factOf(registers, { register: 'station', id: station }) ?? { letter, name: name(letter), keys: [] };
}

export interface Naming {
  /** Name of a station that has got a letter. */
  readonly name: (letter: string) => string;
  /** The station that this tablet wrote under before: its letter and keys go on, since it is the same tablet. */
  readonly before: string | null;
}

/** Gives this station its letter; does nothing when it has one, or while there is no shop yet. */
export async function nameStation(session: Session, { name, before }: Naming): Promise<void> {
  const { registers } = session.view.value.shop;
  if (registers.size === 0 || registers.has(`station/${session.station}`)) return;
  const was = readId(stationId, before);
  const fact = was && factOf(registers, { register: 'station', id: was });
  const value: StationFact = fact
    ? { ...fact, name: nextName(fact.name) }
    : stationFactOf(registers, { station: session.station, name });
  await session.act({ kind: 'set', set: { register: 'station', id: session.station, value } });
}

/** 'Lathe', 'Lathe 2', 'Lathe 3': names are unique, and the old station keeps its own. */
function nextName(name: string): string {
  const [, stem = name, number = '1'] = /^(.*) (\d+)$/.exec(name) ?? [];
  return `${stem} ${Number(number) + 1}`;
}
