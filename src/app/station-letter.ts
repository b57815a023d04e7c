import { factsOf, type Registers } from '../domain/shop/registers.ts';
import { codeLetters } from '../domain/tray/tray-code.ts';
import type { Session } from './session.ts';

/** The first letter that no other station of the shop carries; the first of all when every one is taken. */
export function freeLetter(registers: Registers, station: string): string {
  const taken = new Set(
    factsOf(registers, 'station')
      .filter(({ id }) => id !== station)
      .map(({ fact }) => fact.letter),
  );
  return [...codeLetters].find((letter) => !taken.has(letter)) ?? codeLetters.charAt(0);
}

/** Gives this station its letter; does nothing when it has one. */
export async function nameStation(session: Session, name: (letter: string) => string): Promise<void> {
  const { registers } = session.view.value.shop;
  if (registers.has(`station/${session.station}`)) return;
  const letter = freeLetter(registers, session.station);
  const value = { letter, name: name(letter), keys: [] };
  await session.act({ kind: 'set', set: { register: 'station', id: session.station, value } });
}
