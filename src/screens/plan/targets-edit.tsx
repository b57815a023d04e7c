import type { BatchId } from '../../domain/log/ids.ts';
import { type BatchFact, usualChance } from '../../domain/set-up/batch-facts.ts';
import { useEnterSaves } from '../../ui/field/enter.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { batchChanceWords } from '../../words/people-words.ts';
import { planWords as words } from '../../words/plan-words.ts';
import { setUpWords } from '../../words/set-up-words.ts';
import { useShop } from '../parts/app-context.ts';
import { type KeptDrafts, keptDrafts } from '../parts/form/kept-drafts.ts';
import { useFirstError } from '../parts/form/use-first-error.ts';
import { useForm } from '../parts/form/use-form.ts';
import {
  goodProblem,
  readTargets,
  type TargetsDraft,
  targetsDraftOf,
  variantsOffered,
  withTargets,
} from './targets-draft.ts';

export const keptTargets: KeptDrafts<TargetsDraft> = keptDrafts<TargetsDraft>();

export interface TargetsEditProps {
  readonly id: BatchId;
  readonly now: BatchFact;
  readonly onSaved: () => void;
}

/** The targets of a batch as fields, in the place where they stand. */
export const TargetsEdit = ({ id, now, onSaved }: TargetsEditProps) => {
  const { registers } = useShop();
  const form = useForm({
    id,
    kept: keptTargets,
    start: targetsDraftOf(now),
    read: readTargets,
    toSet: (targets) => ({ register: 'batch', id, value: withTargets(now, targets) }),
  });
  const { draft, change, errorAt } = form;
  const save = () => void form.save().then((saved) => saved && onSaved());
  const body = useFirstError(form.failures);
  useEnterSaves(body, () => form.changed && save());
  return (
    <div class="plan-edit" ref={body} data-testid="targets-edit">
      <div class="plan-fields">
        <Field
          label={words.due}
          kind="date"
          value={draft.due}
          onText={(due) => change({ due })}
          optional={setUpWords.optional}
          error={errorAt('due')}
          testId="targets-due"
        />
        <Field
          label={batchChanceWords.chance}
          hint={batchChanceWords.chanceHint(usualChance)}
          kind="number"
          unit="%"
          value={draft.chance}
          onText={(chance) => change({ chance })}
          optional={setUpWords.optional}
          error={errorAt('chance')}
          testId="targets-chance"
        />
      </div>
      <fieldset class="plan-fieldset">
        <legend class="field-label">{words.goods}</legend>
        <div class="plan-fields">
          {variantsOffered(registers, draft).map(({ id: variant, fact }) => {
            const typed = draft.wanted.get(variant) ?? '';
            return (
              <Field
                key={variant}
                label={fact.name}
                kind="number"
                value={typed}
                onText={(text) => change({ wanted: new Map([...draft.wanted, [variant, text]]) })}
                error={goodProblem(typed)}
                testId={`targets-good-${variant}`}
              />
            );
          })}
        </div>
      </fieldset>
      {form.refusal && <p role="alert">{form.refusal}</p>}
      <p class="plan-note">{words.keepNote}</p>
      <div class="plan-acts">
        <PressButton
          tone="go"
          icon="check"
          label={setUpWords.save}
          disabledReason={form.changed ? undefined : setUpWords.saved}
          closing
          onAct={save}
          testId="targets-save"
        />
        {form.changed && (
          <PressButton
            tone="quiet"
            icon="undo"
            label={setUpWords.asItWas}
            closing
            onAct={form.restore}
            testId="targets-restore"
          />
        )}
      </div>
    </div>
  );
};
