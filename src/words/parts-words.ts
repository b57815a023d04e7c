import type { ShopEvent } from '../domain/log/event.ts';
import type { PartId } from '../domain/log/ids.ts';
import type { CountReason, Heap } from '../domain/log/stores-facts.ts';
import type { Registers } from '../domain/shop/registers.ts';
import { signedNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { nameOf } from './names.ts';
import { wholeNumber } from './number-words.ts';

export const countReasonWords = inLanguage<Readonly<Record<CountReason, string>>>('countReasonWords', {
  'first-count': 'First count',
  miscounted: 'Miscounted',
  found: 'Found',
  lost: 'Lost',
  spoilt: 'Spoilt',
});

export const heapWords = inLanguage<Readonly<Record<Heap, string>>>('heapWords', {
  shelf: 'On the shelf',
  'to-clean': 'To be cleaned',
});

export const partsSentences = inLanguage('partsSentences', {
  received: (what: string) => `Received: ${what}`,
  counted: (part: string, heap: Heap, counted: number) =>
    `${part} counted${heap === 'to-clean' ? ' to be cleaned' : ''}: ${wholeNumber(counted)}`,
  why: {
    'first-count': 'first count',
    miscounted: 'miscounted',
    found: 'found',
    lost: 'lost',
    spoilt: 'spoilt',
  },
  cleaned: (part: string, back: number) => `${part} cleaned: ${wholeNumber(back)} back to stores`,
  lost: (n: number) => `${wholeNumber(n)} lost`,
  allChecked: (delivery: string, bad: number) => `All of ${delivery} checked: ${wholeNumber(bad)} bad`,
  sampled: (sample: number, delivery: string, bad: number) =>
    `Sample of ${wholeNumber(sample)} from ${delivery}: ${wholeNumber(bad)} bad`,
  verdicts: { accepted: 'accepted', refused: 'refused' },
  plan: (letter: string, accept: number) => `plan ${letter}, at most ${wholeNumber(accept)}`,
});

type OfKind<Kind extends ShopEvent['kind']> = Extract<ShopEvent, { kind: Kind }>;

export function receivedWords({ parts }: OfKind<'parts-received'>, registers: Registers): string {
  return partsSentences.received(
    parts.map(({ part, pieces }) => `${wholeNumber(pieces)} ${partName(registers, part)}`).join(', '),
  );
}

export function countedWords(
  { part, heap, counted, pieces, why }: OfKind<'parts-counted'>,
  registers: Registers,
): string {
  const change = pieces === 0 ? '' : `, ${signedNumber(pieces)}`;
  return `${partsSentences.counted(partName(registers, part), heap, counted)}${change} (${partsSentences.why[why]})`;
}

export function cleanedWords({ part, back, lost }: OfKind<'parts-cleaned'>, registers: Registers): string {
  const cleaned = partsSentences.cleaned(partName(registers, part), back);
  return lost > 0 ? `${cleaned}, ${partsSentences.lost(lost)}` : cleaned;
}

export function sampledWords(
  { part, lot, letter, sample, accept, bad, verdict }: OfKind<'parts-sampled'>,
  registers: Registers,
): string {
  const delivery = `${wholeNumber(lot)} ${partName(registers, part)}`;
  if (letter === null) return partsSentences.allChecked(delivery, bad);
  return `${partsSentences.sampled(sample, delivery, bad)}, ${partsSentences.verdicts[verdict]} (${partsSentences.plan(letter, accept)})`;
}

function partName(registers: Registers, id: PartId): string {
  return nameOf(registers, { register: 'part', id });
}
