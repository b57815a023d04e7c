import type { StationId } from '../domain/log/ids.ts';
import type { StationFact } from '../domain/set-up/facts.ts';
import { factOf, factsOf, type Registers } from '../domain/shop/registers.ts';
import { codeLetters } from '../domain/tray/tray-code.ts';
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

/** Gives this station its letter; does nothing when it has one. */
export async function nameStation(session: Session, name: (letter: string) => string): Promise<void> {
  const { registers } = session.view.value.shop;
  if (registers.has(`station/${session.station}`)) return;
  const value = stationFactOf(registers, { station: session.station, name });
  await session.act({ kind: 'set', set: { register: 'station', id: session.station, value } });
}
