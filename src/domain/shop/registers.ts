import { mostRevisions, type SetUpEvent } from '../log/event.ts';
import { compareStamps } from '../log/stamp.ts';
import { calledBy, type FactOf, type IdOf, type RegisterName, type RegisterSet } from '../set-up/register.ts';

/** The latest word on each set-up fact, by `register/id`. */
export type Registers = Map<string, SetUpEvent>;

const keyOf = ({ register, id }: Pick<RegisterSet, 'register' | 'id'>) => `${register}/${id}`;

/** Keeps the later of two words, so that all stores agree in whatever order they hear them. */
export function setRegister(registers: Registers, event: SetUpEvent): void {
  const key = keyOf(event.set);
  const held = registers.get(key);
  if (!held || isLater(event, held)) registers.set(key, event);
}

/**
 * A word whose author saw another comes after it, whatever the clocks say. Words said apart go by their stamps; equal
 * ones by station, then number. Stations compare by code unit: the order of letters is not the same on every tablet.
 */
function isLater(a: SetUpEvent, b: SetUpEvent): boolean {
  const order =
    (a.rev ?? 0) - (b.rev ?? 0) ||
    compareStamps(a.stamp, b.stamp) ||
    compareText(a.station, b.station) ||
    a.seq - b.seq;
  return order > 0;
}

function compareText(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

/** The `rev` of a new word on a fact by someone who sees these registers. */
export function nextRev(registers: Registers, set: Pick<RegisterSet, 'register' | 'id'>): number {
  const held = registers.get(keyOf(set));
  return held ? Math.min((held.rev ?? 0) + 1, mostRevisions) : 0;
}

export interface Entry<Name extends RegisterName> {
  readonly id: IdOf<Name>;
  readonly fact: FactOf<Name>;
}

/** The value of one register; undefined while nobody has set it. */
export function factOf<Name extends RegisterName>(
  registers: Registers,
  { register, id }: { register: Name; id: IdOf<Name> },
): FactOf<Name> | undefined {
  const set = registers.get(`${register}/${id}`)?.set;
  // The key ties the name of the register to the type of its value; the compiler cannot see through the text.
  return set?.value as FactOf<Name> | undefined;
}

/** All values of one kind of register, in the order of their names; retired ones among them. */
export function factsOf<Name extends RegisterName>(
  registers: Registers,
  register: Name,
): readonly Entry<Name>[] {
  return [...unsortedFacts(registers, register)].sort((a, b) => byName(a.fact, b.fact));
}

/** The same in no order: of what grows with the years, such as batches, not all need be put in order at each look. */
export function* unsortedFacts<Name extends RegisterName>(
  registers: Registers,
  register: Name,
): Generator<Entry<Name>> {
  for (const { set } of registers.values()) {
    if (set.register === register) yield { id: set.id, fact: set.value } as Entry<Name>;
  }
}

const names = new Intl.Collator(undefined, { numeric: true });

/** Compares facts by name, numbers in it by their value. */
export function byName(a: FactOf<RegisterName>, b: FactOf<RegisterName>): number {
  return names.compare(calledBy(a), calledBy(b));
}
