import { readId, type StationId, stationId } from '../domain/log/ids.ts';
import type { StationFact } from '../domain/set-up/facts.ts';
import { sameName } from '../domain/set-up/text.ts';
import { longestName } from '../domain/set-up/text-schema.ts';
import { factOf, factsOf, type Registers } from '../domain/shop/registers.ts';
import { letterOf } from '../domain/shop/station-letters.ts';
import { codeLetters } from '../domain/tray/code-alphabet.ts';
import type { Session } from './session.ts';

/** Name of a station that has got a letter. */
type NameByLetter = (letter: string) => string;

/** What this station is called; a station that is not named yet gets a free letter. */
export function stationFactOf(
  registers: Registers,
  { station, name }: { station: StationId; name: NameByLetter },
): StationFact {
  const known = factOf(registers, { register: 'station', id: station });
  if (known) return known;
  const state = letterOf(registers, station);
  // Where none is free the first stands in: it is another's by an earlier claim, so no code is made with it.
  const letter = (state.kind === 'none' && state.free) || codeLetters.charAt(0);
  return { letter, name: uniqueName(registers, { station, wanted: name(letter) }), keys: [] };
}

export interface Naming {
  readonly name: NameByLetter;
  /** The station that this tablet wrote under before: its letter and keys go on, since it is the same tablet. */
  readonly before: string | null;
}

/** Gives this station its letter; does nothing when it has one, or while there is no shop yet. */
export async function nameStation(session: Session, { name, before }: Naming): Promise<void> {
  const { registers } = session.view.value.shop;
  const { station } = session;
  if (registers.size === 0 || registers.has(`station/${station}`)) return;
  const was = readId(stationId, before);
  const fact = was && factOf(registers, { register: 'station', id: was });
  if (!was || !fact) {
    const value = stationFactOf(registers, { station, name });
    await session.act({ kind: 'set', set: { register: 'station', id: station, value } });
    return;
  }
  // A letter that is another's by now is not to be handed on.
  const isFree = letterOf(registers, was).kind === 'own' || fact.handedTo === station;
  const letter = isFree ? fact.letter : stationFactOf(registers, { station, name }).letter;
  if (isFree) await handOver(session, { from: was, fact });
  const { stage = null, keys } = fact;
  const called = uniqueName(registers, { station, wanted: fact.name });
  const value: StationFact = { letter, name: called, keys, stage };
  await session.act({ kind: 'set', set: { register: 'station', id: station, value } });
}

/** Says that this station goes on with the letter of another, which makes no code with it any more. */
async function handOver(
  session: Session,
  { from, fact }: { from: StationId; fact: StationFact },
): Promise<void> {
  const value: StationFact = { ...fact, handedTo: session.station };
  await session.act({ kind: 'set', set: { register: 'station', id: from, value } });
}

/**
 * Takes over the letter of a station whose tablet is gone. Should it be in use after all, it takes another letter as soon
 * as it hears of this.
 */
export async function takeLetterOver(session: Session, from: StationId, name: NameByLetter): Promise<void> {
  const { registers } = session.view.value.shop;
  const { station } = session;
  const fact = factOf(registers, { register: 'station', id: from });
  if (!fact || from === station) return;
  await handOver(session, { from, fact });
  const value = withLetter(registers, { station, letter: fact.letter, name });
  await session.act({ kind: 'set', set: { register: 'station', id: station, value } });
}

/** That this station took another letter by itself, and why. */
export interface LetterNews {
  readonly from: string;
  readonly to: string;
  /** Name of the station that has the former letter. */
  readonly owner: string;
}

/**
 * Takes a free letter where that of this station is another's by an earlier claim, and tells what changed; null when there
 * is nothing to change, or no letter is free.
 */
export async function settleLetter(session: Session, name: NameByLetter): Promise<LetterNews | null> {
  const { registers } = session.view.peek().shop;
  const { station } = session;
  const state = letterOf(registers, station);
  if (state.kind !== 'lost' || state.free === null) return null;
  const value = withLetter(registers, { station, letter: state.free, name });
  const owner = factOf(registers, { register: 'station', id: state.owner })?.name ?? state.owner;
  const result = await session.act({ kind: 'set', set: { register: 'station', id: station, value } });
  return result.kind === 'saved' ? { from: state.letter, to: state.free, owner } : null;
}

/** The fact of a station with another letter; a name that only told the letter tells the new one. */
function withLetter(
  registers: Registers,
  { station, letter, name }: { station: StationId; letter: string; name: NameByLetter },
): StationFact {
  const fact = stationFactOf(registers, { station, name });
  const { handedTo: _givenUp, ...rest } = fact;
  const wanted = sameName(fact.name, name(fact.letter)) ? name(letter) : fact.name;
  return { ...rest, letter, name: uniqueName(registers, { station, wanted }) };
}

/** 'Lathe', else 'Lathe 2', 'Lathe 3': names are unique, and a station that has the name keeps it. */
function uniqueName(
  registers: Registers,
  { station, wanted }: { station: StationId; wanted: string },
): string {
  const others = factsOf(registers, 'station').filter(({ id }) => id !== station);
  const isTaken = (name: string) => others.some(({ fact }) => sameName(fact.name, name));
  let name = wanted;
  while (isTaken(name)) name = nextName(name);
  return name;
}

function nextName(name: string): string {
  const [, stem = name, number = '1'] = /^(.*) (\d+)$/.exec(name) ?? [];
  return `${stem.slice(0, longestName - 4)} ${Number(number) + 1}`;
}
