import type { StationId } from '../log/ids.ts';
import { codeLetters } from '../tray/code-alphabet.ts';
import type { Registers } from './registers.ts';

/**
 * What a station's codes may begin with. A station that was set up apart may have taken the letter of another; then the
 * earlier claim stands, and the other station may make no code before it has a letter of its own.
 */
export type LetterState =
  | { readonly kind: 'own'; readonly letter: string }
  /** Its letter is `owner`'s by an earlier claim, or was handed over to it. `free` is the letter to take; null when all are taken. */
  | {
      readonly kind: 'lost';
      readonly letter: string;
      readonly owner: StationId;
      readonly free: string | null;
    }
  /** The station was never given a letter. */
  | { readonly kind: 'none'; readonly free: string | null };

interface Claim {
  readonly station: StationId;
  readonly letter: string;
  /** When the letter was claimed, ms UTC. */
  readonly since: number;
  readonly handedTo: StationId | undefined;
}

/**
 * The letter of a station. All stations that see the same words come to the same answer for each, so that several which have
 * to give way at once take different letters.
 */
export function letterOf(registers: Registers, station: StationId): LetterState {
  const claims = claimsInOrder(registers);
  const owners = new Map<string, StationId>();
  for (const { letter, station: id, handedTo } of claims) {
    if (handedTo === undefined && !owners.has(letter)) owners.set(letter, id);
  }
  const free = [...codeLetters].filter((letter) => !owners.has(letter));
  const displaced = claims.filter(
    ({ letter, station: id, handedTo }) => handedTo === undefined && owners.get(letter) !== id,
  );
  // Those that have to give way choose first. What comes after them may meet one that is long gone: better than no letter.
  const afterThem = free[displaced.length] ?? free.at(-1) ?? null;
  const own = claims.find((claim) => claim.station === station);
  if (!own) return { kind: 'none', free: afterThem };
  const { letter, handedTo } = own;
  const owner = owners.get(letter);
  if (handedTo !== undefined) return { kind: 'lost', letter, owner: owner ?? handedTo, free: afterThem };
  if (owner === undefined || owner === station) return { kind: 'own', letter };
  return { kind: 'lost', letter, owner, free: free[displaced.indexOf(own)] ?? null };
}

/**
 * The earlier claim first; claims of one moment by station, as words are. Not by how often a fact was changed: a tablet that
 * was taught a key has its letter for no shorter time than before, and whatever is said later must leave the order as it is.
 */
function claimsInOrder(registers: Registers): readonly Claim[] {
  const claims: Claim[] = [];
  for (const { set, stamp } of registers.values()) {
    if (set.register !== 'station') continue;
    const { letter, since = stamp.wall, handedTo } = set.value;
    claims.push({ station: set.id, letter, since, handedTo });
  }
  return claims.sort((a, b) => a.since - b.since || (a.station < b.station ? -1 : 1));
}
