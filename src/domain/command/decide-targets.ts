import type { NewTargets } from '../plan/targets/judge-targets.ts';
import type { BatchFact } from '../set-up/batch-facts.ts';
import { factOf } from '../shop/registers.ts';
import type { Shop } from '../shop/shop.ts';
import type { CommandOf } from './command.ts';
import { decideSet } from './decide-set-up.ts';
import { type Circumstances, type Decision, happens, refuse } from './decision.ts';

/** New targets of some batches in one act: all of them, or none. What is not said of a batch stays as it is. */
export function decideTargets(
  shop: Shop,
  { targets }: CommandOf<'set-targets'>,
  at: Circumstances,
): Decision {
  const decisions = targets.map(({ batch, good, due, chance }): Decision => {
    const now = factOf(shop.registers, { register: 'batch', id: batch });
    if (!now) return refuse({ kind: 'no-such-batch' });
    const value: BatchFact = {
      ...now,
      wanted: withGood(now.wanted, good),
      ...(due !== undefined && { due }),
      ...(chance !== undefined && { chance }),
    };
    return decideSet(shop, { kind: 'set', set: { register: 'batch', id: batch, value } }, at);
  });
  const refusal = decisions.find(({ kind }) => kind === 'refused');
  return refusal ?? happens(decisions.flatMap((each) => (each.kind === 'events' ? each.drafts : [])));
}

/** Numbers in the place where they stood; new ones at the end, and none of what is wanted no more. */
function withGood(now: BatchFact['wanted'], changes: NewTargets['good']): BatchFact['wanted'] {
  const goods = new Map([...now, ...changes].map(({ variant, good }) => [variant, good]));
  return [...goods].flatMap(([variant, good]) => (good > 0 ? [{ variant, good }] : []));
}
