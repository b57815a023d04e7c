import { mostParts } from '../log/stores-facts.ts';
import { isTold, partsOnHand, partsToClean } from '../rollup/parts-on-hand.ts';
import { problemOfNote, tidyText } from '../set-up/text.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { judgeWholeNumber } from './whole-number.ts';

/** Takes a delivery in: its lines are kept as one fact. */
export function decideReceive(
  { registers }: Shop,
  { parts, note }: CommandOf<'receive-parts'>,
  at: Circumstances,
): Decision {
  if (parts.length === 0) return refuse({ kind: 'no-part' });
  for (const { part, pieces, cost } of parts) {
    if (!factOf(registers, { register: 'part', id: part })) return refuse({ kind: 'no-part' });
    const count = judgeWholeNumber(pieces, { least: 1, most: mostParts });
    if (!count.ok) return refuse({ kind: 'number', problem: count.problem });
    const money = judgeWholeNumber(cost ?? 0, { least: 0, most: Number.MAX_SAFE_INTEGER });
    if (!money.ok) return refuse({ kind: 'number', problem: money.problem });
  }
  const text = problemOfNote(note);
  if (text) return refuse({ kind: 'text', problem: text });
  return happens([
    {
      ...envelopeAt(at),
      kind: 'parts-received',
      parts: parts.map(({ part, pieces, cost }) => ({ part, pieces, cost })),
      note: tidyText(note),
    },
  ]);
}

/** Corrects what the log has of a part to what a person has counted, on the shelf or of what is to be cleaned. */
export function decideCount(
  shop: Shop,
  { part, heap, counted, why, note }: CommandOf<'count-parts'>,
  at: Circumstances,
): Decision {
  if (!factOf(shop.registers, { register: 'part', id: part })) return refuse({ kind: 'no-part' });
  const count = judgeWholeNumber(counted, { least: 0, most: mostParts });
  if (!count.ok) return refuse({ kind: 'number', problem: count.problem });
  const text = problemOfNote(note);
  if (text) return refuse({ kind: 'text', problem: text });
  const there = heap === 'shelf' ? partsOnHand(shop, part) : partsToClean(shop, part);
  // The first count of a part says something even when it says what the log has: none, perhaps.
  const isNews = heap === 'shelf' && !isTold(shop, part);
  if (counted === there && !isNews) return refuse({ kind: 'count-is-right' });
  return happens([
    {
      ...envelopeAt(at),
      kind: 'parts-counted',
      ...{ part, heap, counted, pieces: counted - there, why, note: tidyText(note) },
    },
  ]);
}

/**
 * Brings saved parts back to the shelf, cleaned. The measure is what the screen showed when the finger came down, so that the
 * parts in the hand are never refused because another window was quicker.
 */
export function decideClean(
  shop: Shop,
  { part, back, lost, shown }: CommandOf<'clean-parts'>,
  at: Circumstances,
): Decision {
  for (const pieces of [back, lost]) {
    const count = judgeWholeNumber(pieces, { least: 0, most: mostParts });
    if (!count.ok) return refuse({ kind: 'number', problem: count.problem });
  }
  const there = Math.max(shown, partsToClean(shop, part));
  if (there <= 0) return refuse({ kind: 'none-to-clean' });
  const all = judgeWholeNumber(back + lost, { least: 1, most: there });
  if (!all.ok) return refuse({ kind: 'number', problem: all.problem });
  return happens([{ ...envelopeAt(at), kind: 'parts-cleaned', part, back, lost }]);
}
