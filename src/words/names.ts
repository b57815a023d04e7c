import type { RegisterName } from '../domain/set-up/register.ts';
import type { Registers } from '../domain/shop/registers.ts';

/** The name of a set-up fact as the shop has it now; the bare id of one that nobody has named. */
export function nameOf(
  registers: Registers,
  { register, id }: { register: RegisterName; id: string },
): string {
  return registers.get(`${register}/${id}`)?.set.value.name ?? id;
}
