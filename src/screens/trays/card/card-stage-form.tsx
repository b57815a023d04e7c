import { Field } from '../../../ui/field/field.tsx';
import { SelectField } from '../../../ui/field/select-field.tsx';
import { PressButton } from '../../../ui/press/press-button.tsx';
import { cardWords as words } from '../../../words/card-words.ts';
import { type FlawDraft, flawKey, type LineKey, passKey, type StageDraft } from './card-draft.ts';
import type { CardStage } from './card-lines.ts';

export interface CardStageFormProps {
  readonly at: CardStage;
  readonly draft: StageDraft;
  readonly onDraft: (draft: StageDraft) => void;
  readonly problems: ReadonlyMap<LineKey, string>;
}

/** What the pencil says of one stage: how many passed, and its flaws line by line. */
export const CardStageForm = ({ at, draft, onDraft, problems }: CardStageFormProps) => {
  const { stage, name } = at;
  const addFlaw = () => {
    const key = 1 + Math.max(0, ...draft.flaws.map((flaw) => flaw.key));
    onDraft({
      ...draft,
      flaws: [...draft.flaws, { key, reason: undefined, outcome: undefined, pieces: '' }],
    });
  };
  return (
    <li class="card-stage">
      <div class="card-stage-name">
        <h2 dir="auto">{name}</h2>
        <p>{words.here(at.here)}</p>
      </div>
      <Field
        label={words.passed}
        kind="number"
        value={draft.passed}
        onText={(passed) => onDraft({ ...draft, passed })}
        error={problems.get(passKey(stage))}
        testId={`card-passed-${stage}`}
      />
      <PressButton
        icon="plus"
        label={words.addFlaw}
        name={words.addFlawAt(name)}
        onAct={addFlaw}
        testId={`card-add-${stage}`}
      />
      {draft.flaws.map((flaw) => (
        <FlawLine
          key={flaw.key}
          at={at}
          flaw={flaw}
          error={problems.get(flawKey(stage, flaw.key))}
          onFlaw={(next) =>
            onDraft({ ...draft, flaws: draft.flaws.map((each) => (each === flaw ? next : each)) })
          }
          onRemove={() => onDraft({ ...draft, flaws: draft.flaws.filter((each) => each !== flaw) })}
        />
      ))}
    </li>
  );
};

interface FlawLineProps {
  readonly at: CardStage;
  readonly flaw: FlawDraft;
  readonly error: string | undefined;
  readonly onFlaw: (flaw: FlawDraft) => void;
  readonly onRemove: () => void;
}

const FlawLine = ({ at, flaw, error, onFlaw, onRemove }: FlawLineProps) => {
  const testId = `card-${flawKey(at.stage, flaw.key)}`;
  return (
    <div class="card-flaw">
      <Field
        label={words.count}
        kind="number"
        value={flaw.pieces}
        onText={(pieces) => onFlaw({ ...flaw, pieces })}
        error={error}
        testId={`${testId}-count`}
      />
      <SelectField
        label={words.reason}
        options={at.reasons}
        value={flaw.reason}
        nothing={words.chooseReason}
        onChoose={(reason) => onFlaw({ ...flaw, reason })}
        testId={`${testId}-reason`}
      />
      <SelectField
        label={words.outcome}
        options={at.outcomes}
        value={flaw.outcome}
        nothing={words.chooseOutcome}
        onChoose={(outcome) => onFlaw({ ...flaw, outcome })}
        testId={`${testId}-outcome`}
      />
      <PressButton
        tone="quiet"
        icon="cross"
        label={words.remove}
        name={words.removeAt(at.name)}
        onAct={onRemove}
        testId={`${testId}-remove`}
      />
    </div>
  );
};
