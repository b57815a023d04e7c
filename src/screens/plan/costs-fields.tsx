import { useState } from 'preact/hooks';
import type { CheapestStart } from '../../domain/plan/starts/cheapest-start.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { setUpWords } from '../../words/set-up-words.ts';
import { startsWords as words } from '../../words/starts-words.ts';
import { useSession } from '../parts/app-context.ts';
import { keptDrafts } from '../parts/form/kept-drafts.ts';
import { type CostsDraft, costProblem, costsOf, noCosts } from './starts-view.ts';

const kept = keptDrafts<CostsDraft>();
const draftId = 'costs';

export interface Costs {
  readonly draft: CostsDraft;
  readonly change: (part: Partial<CostsDraft>) => void;
}

/** What starts cost, as it is typed: kept while the app is open, for all variants alike, and written nowhere. */
export function useCosts(): Costs {
  const shelf = kept(useSession());
  const [draft, setDraft] = useState(shelf.get(draftId) ?? noCosts);
  return {
    draft,
    change(part) {
      const next = { ...draft, ...part };
      const isEmpty = Object.values(next).every((typed) => typed.trim() === '');
      shelf.keep(draftId, isEmpty ? undefined : next);
      setDraft(next);
    },
  };
}

export interface CostsFieldsProps {
  readonly costs: Costs;
  readonly cheapest: CheapestStart | null;
}

/** What a piece too few and one too many costs, and the number of starts that is cheapest then. */
export const CostsFields = ({ costs: { draft, change }, cheapest }: CostsFieldsProps) => (
  <div class="plan-edit" data-testid="start-costs">
    <h3>{words.costs}</h3>
    <p class="plan-note">{words.costsLead}</p>
    <div class="plan-fields">
      <Field
        label={words.perStart}
        hint={words.perStartHint}
        kind="number"
        optional={setUpWords.optional}
        value={draft.perStart}
        onText={(perStart) => change({ perStart })}
        error={costProblem(draft.perStart)}
        testId="cost-start"
      />
      <Field
        label={words.perShort}
        hint={words.perShortHint}
        kind="number"
        value={draft.perShort}
        onText={(perShort) => change({ perShort })}
        error={costProblem(draft.perShort)}
        testId="cost-short"
      />
      <Field
        label={words.perOver}
        hint={words.perOverHint}
        kind="number"
        value={draft.perOver}
        onText={(perOver) => change({ perOver })}
        error={costProblem(draft.perOver)}
        testId="cost-over"
      />
    </div>
    <p class="plan-answer" role="status" data-testid="start-cheapest">
      {costsOf(draft) === null ? words.noCosts : cheapest ? words.cheapest(cheapest) : words.counting}
    </p>
    {draft !== noCosts && (
      <div class="plan-acts">
        <PressButton
          tone="quiet"
          icon="undo"
          label={words.forget}
          onAct={() => change(noCosts)}
          testId="cost-forget"
        />
      </div>
    )}
  </div>
);
