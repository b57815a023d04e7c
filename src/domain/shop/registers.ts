import type { SetUpEvent } from '../log/event.ts';
import { compareStamps } from '../log/stamp.ts';
import type { FactOf, IdOf, RegisterName } from '../set-up/register.ts';

/** The latest word on each set-up fact, by `register/id`. */
export type Registers = Map<string, SetUpEvent>;

/** Keeps the later of two words; equal stamps go by station, then number, so that all stores agree. */
export function setRegister(registers: Registers, event: SetUpEvent): void {
  const key = `${event.set.register}/${event.set.id}`;
  const held = registers.get(key);
  if (!held || isLater(event, held)) registers.set(key, event);
}

function isLater(a: SetUpEvent, b: SetUpEvent): boolean {
  const order = compareStamps(a.stamp, b.stamp) || a.station.localeCompare(b.station, 'en') || a.seq - b.seq;
  return order > 0;
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
  const found: Entry<Name>[] = [];
  for (const { set } of registers.values()) {
    if (set.register === register) found.push({ id: set.id, fact: set.value } as Entry<Name>);
  }
  return found.sort((a, b) => a.fact.name.localeCompare(b.fact.name, undefined, { numeric: true }));
}
