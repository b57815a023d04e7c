import type { Registers } from '../../domain/shop/registers.ts';
import { nameOf } from '../../words/names.ts';
import { traysWords as words } from '../../words/trays-words.ts';
import type { TraySpot } from './trays-view.ts';

/** "Sand: 8 firsts waiting". */
export function spotWords({ stage, at, grade, shown }: TraySpot, registers: Registers): string {
  const name = nameOf(registers, { register: 'stage', id: stage });
  const count = (at === 'held' ? words.held : words.waiting)(shown, grade);
  return `${name}: ${count}`;
}
