import './choice-row.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';

/** One thing to choose, with room for a mark and a second line. */
interface Choice<Value extends string> {
  value: Value;
  label: string;
  detail?: string | undefined;
  /** Stands before the label: a wood's swatch, an icon. */
  mark?: ComponentChildren | undefined;
}

export interface ChoiceRowProps<Value extends string> {
  label: string;
  choices: readonly Choice<Value>[];
  value: Value | undefined;
  onChoose: (value: Value) => void;
  hint?: string | undefined;
  error?: string | undefined;
  size?: 'normal' | 'bench-small' | undefined;
  testId?: string | undefined;
}

/** A few big choices side by side, one of them taken. Arrow keys move between them, as among radio buttons. */
export const ChoiceRow = <Value extends string>(props: ChoiceRowProps<Value>) => {
  const id = useId();
  const { choices, value, size = 'normal', hint, error } = props;
  const described = [hint && `${id}-hint`, error && `${id}-error`].filter(Boolean).join(' ') || undefined;
  return (
    <fieldset class="choices" data-size={size} data-testid={props.testId} aria-describedby={described}>
      <legend class="field-label">{props.label}</legend>
      {hint && (
        <p class="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      <div class="choices-row">
        {choices.map((choice) => (
          <label
            class="choice"
            key={choice.value}
            data-testid={props.testId && `${props.testId}-${choice.value}`}
          >
            <input
              type="radio"
              name={id}
              value={choice.value}
              checked={choice.value === value}
              onChange={() => props.onChoose(choice.value)}
            />
            <span class="choice-peg" aria-hidden="true">
              <Icon name="check" size={24} />
            </span>
            {choice.mark}
            <span>
              {choice.label}
              {choice.detail && <span class="choice-detail">{choice.detail}</span>}
            </span>
          </label>
        ))}
      </div>
      <p class="field-error" id={`${id}-error`} role="status">
        {error && (
          <>
            <Icon name="warn" size={24} />
            <span>{error}</span>
          </>
        )}
      </p>
    </fieldset>
  );
};
