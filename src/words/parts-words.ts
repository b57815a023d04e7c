import type { ShopEvent } from '../domain/log/event.ts';
import type { PartId } from '../domain/log/ids.ts';
import type { CountReason, Heap } from '../domain/log/stores-facts.ts';
import type { Registers } from '../domain/shop/registers.ts';
import { nameOf } from './names.ts';
import { wholeNumber } from './number-words.ts';

export const countReasonWords: Record<CountReason, string> = {
  'first-count': 'First count',
  miscounted: 'Miscounted',
  found: 'Found',
  lost: 'Lost',
  spoilt: 'Spoilt',
};

export const heapWords: Record<Heap, string> = { shelf: 'On the shelf', 'to-clean': 'To be cleaned' };

/** "+7", "−3": a change with its sign. */
export function signedNumber(n: number): string {
  return `${n > 0 ? '+' : ''}${wholeNumber(n)}`.replace('-', '−');
}

type OfKind<Kind extends ShopEvent['kind']> = Extract<ShopEvent, { kind: Kind }>;

export function receivedWords({ parts }: OfKind<'parts-received'>, registers: Registers): string {
  return `Received: ${parts.map(({ part, pieces }) => `${wholeNumber(pieces)} ${partName(registers, part)}`).join(', ')}`;
}

export function countedWords(
  { part, heap, counted, pieces, why }: OfKind<'parts-counted'>,
  registers: Registers,
): string {
  const where = heap === 'to-clean' ? ' to be cleaned' : '';
  const change = pieces === 0 ? '' : `, ${signedNumber(pieces)}`;
  return `${partName(registers, part)} counted${where}: ${wholeNumber(counted)}${change} (${countReasonWords[why].toLowerCase()})`;
}

export function cleanedWords({ part, back, lost }: OfKind<'parts-cleaned'>, registers: Registers): string {
  const gone = lost > 0 ? `, ${wholeNumber(lost)} lost` : '';
  return `${partName(registers, part)} cleaned: ${wholeNumber(back)} back to stores${gone}`;
}

export function sampledWords(
  { part, lot, letter, sample, accept, bad, verdict }: OfKind<'parts-sampled'>,
  registers: Registers,
): string {
  const delivery = `${wholeNumber(lot)} ${partName(registers, part)}`;
  if (letter === null) return `All of ${delivery} checked: ${wholeNumber(bad)} bad`;
  return `Sample of ${wholeNumber(sample)} from ${delivery}: ${wholeNumber(bad)} bad, ${verdict} (plan ${letter}, at most ${wholeNumber(accept)})`;
}

function partName(registers: Registers, id: PartId): string {
  return nameOf(registers, { register: 'part', id });
}
