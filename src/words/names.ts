import { calledBy, type RegisterName } from '../domain/set-up/register.ts';
import type { Registers } from '../domain/shop/registers.ts';

/** What a set-up fact is called by as the shop has it now; the bare id of one that nobody has named. */
export function nameOf(
  registers: Registers,
  { register, id }: { register: RegisterName; id: string },
): string {
  const set = registers.get(`${register}/${id}`)?.set;
  return set ? calledBy(set.value) : id;
}
