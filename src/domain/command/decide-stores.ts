import { mostParts } from '../log/stores-facts.ts';
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
