import { type StageDoing, stageDoings } from '../../domain/set-up/facts.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { woodCareWords as words } from '../../words/wood-care-words.ts';

export interface StageDoingsFieldProps {
  /** null while nobody has said. */
  readonly does: readonly StageDoing[] | null;
  readonly onDoes: (does: readonly StageDoing[]) => void;
}

/** What a stage does that people must be warned of: any of them, or none. */
export const StageDoingsField = ({ does, onDoes }: StageDoingsFieldProps) => {
  const now = does ?? [];
  return (
    <fieldset class="set-up-bill" data-testid="stage-does">
      <legend class="field-label">{words.does}</legend>
      <p class="field-hint">{does === null ? words.doesNotSaid : words.doesHint}</p>
      <ul class="set-up-rack">
        {stageDoings.map((each) => (
          <li key={each}>
            <PressButton
              label={words.doings[each]}
              detail={words.doingDetails[each]}
              selected={now.includes(each)}
              onAct={() =>
                onDoes(stageDoings.filter((one) => (one === each ? !now.includes(each) : now.includes(one))))
              }
              testId={`stage-does-${each}`}
            />
          </li>
        ))}
      </ul>
    </fieldset>
  );
};
