import type { LoadName } from '../../domain/plan/constraint/constraint-study.ts';
import type { VariantDemand } from '../../domain/plan/constraint/variant-demand.ts';
import { constraintWords as words } from '../../words/constraint-words.ts';
import { nameOf } from '../../words/names.ts';
import { useShop } from '../parts/app-context.ts';

export interface ConstraintNames {
  readonly stage: (id: string) => string;
  readonly resource: (name: LoadName) => string;
  /** With its batch where there are several. */
  readonly variant: (key: string) => string;
}

export function useConstraintNames(demands: readonly VariantDemand[]): ConstraintNames {
  const { registers } = useShop();
  const hasSeveral = new Set(demands.map(({ batch }) => batch)).size > 1;
  const stage = (id: string) => nameOf(registers, { register: 'stage', id });
  return {
    stage,
    resource(name) {
      if (name === 'hands') return words.hands;
      const [kind, id = ''] = name.split('/');
      if (kind === 'hands') return words.handsAt(stage(id));
      return kind === 'stage' ? words.placesOf(stage(id)) : nameOf(registers, { register: 'resource', id });
    },
    variant(key) {
      const of = demands.find((each) => each.key === key);
      if (!of) return key;
      const name = nameOf(registers, { register: 'variant', id: of.variant });
      return hasSeveral ? words.ofBatch(name, nameOf(registers, { register: 'batch', id: of.batch })) : name;
    },
  };
}
