import starting from '../../../shared/label-sizes.json';
import { readRegisterSets } from '../set-up/register.ts';
import { byName, type Entry, factsOf, type Registers } from '../shop/registers.ts';

/** Sizes that every shop begins with, until it says otherwise of one of them. */
const startingSizes: readonly Entry<'label-size'>[] = readRegisterSets(
  starting.sizes.map((size) => ({ register: 'label-size', ...size })),
).flatMap((set) => (set.register === 'label-size' ? [{ id: set.id, fact: set.value }] : []));

/**
 * All sizes of label of a shop by name, its own and those to start from; retired ones among them.
 * @param called what one to start from is called in the language of the tablet
 */
export function labelSizes(
  registers: Registers,
  called = (english: string): string => english,
): readonly Entry<'label-size'>[] {
  const own = factsOf(registers, 'label-size');
  const untouched = startingSizes
    .filter(({ id }) => !own.some((entry) => entry.id === id))
    .map(({ id, fact }) => ({ id, fact: { ...fact, name: called(fact.name) } }));
  return [...own, ...untouched].toSorted((a, b) => byName(a.fact, b.fact));
}
