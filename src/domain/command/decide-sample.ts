import { mostParts } from '../log/stores-facts.ts';
import { samplingPlan } from '../sampling/sampling-plan.ts';
import { problemOfNote, tidyText } from '../set-up/text.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { CommandOf } from './command.ts';
import { type Circumstances, type Decision, envelopeAt, happens, refuse } from './decision.ts';
import { judgeWholeNumber } from './whole-number.ts';

/**
 * Keeps what a sample of a delivery came to, with the plan as it was then. With more bad ones than the plan accepts the
 * delivery is refused; where all were checked, with any.
 */
export function decideSample(
  { registers }: Shop,
  { part, lot, limit, bad, note }: CommandOf<'sample-parts'>,
  at: Circumstances,
): Decision {
  if (!factOf(registers, { register: 'part', id: part })) return refuse({ kind: 'no-part' });
  const came = judgeWholeNumber(lot, { least: 1, most: mostParts });
  if (!came.ok) return refuse({ kind: 'number', problem: came.problem });
  const plan = samplingPlan(lot, limit);
  const { letter, sample, accept } = plan.kind === 'all' ? { letter: null, sample: lot, accept: 0 } : plan;
  const found = judgeWholeNumber(bad, { least: 0, most: sample });
  if (!found.ok) return refuse({ kind: 'number', problem: found.problem });
  const text = problemOfNote(note);
  if (text) return refuse({ kind: 'text', problem: text });
  return happens([
    {
      ...envelopeAt(at),
      kind: 'parts-sampled',
      ...{ part, lot, limit: Math.round(Number(limit) * 100), letter, sample, accept, bad },
      verdict: bad <= accept ? 'accepted' : 'refused',
      note: tidyText(note),
    },
  ]);
}
