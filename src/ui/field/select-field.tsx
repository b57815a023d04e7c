import { useId } from 'preact/hooks';
import { Icon } from '../icon/icon.tsx';
import { describedBy, FieldFrame, type FieldWords, fieldIds } from './field-frame.tsx';

/** One thing to choose. */
interface SelectOption<Value extends string> {
  value: Value;
  label: string;
}

export interface SelectFieldProps<Value extends string> extends FieldWords {
  options: readonly SelectOption<Value>[];
  /** The chosen one; undefined shows `nothing`. */
  value: Value | undefined;
  onChoose: (value: Value) => void;
  /** Shown while nothing is chosen. */
  nothing?: string | undefined;
  testId?: string | undefined;
}

/** A choice from a list too long for `ChoiceRow`. */
export const SelectField = <Value extends string>(props: SelectFieldProps<Value>) => {
  const ids = fieldIds(useId());
  const { label, hint, error, options, value } = props;
  const choose = (typed: string): void => {
    const chosen = options.find((option) => option.value === typed);
    if (chosen) props.onChoose(chosen.value);
  };
  return (
    <FieldFrame label={label} hint={hint} error={error} ids={ids}>
      <span class="slot-choice">
        <select
          id={ids.slot}
          class="slot"
          value={value ?? ''}
          data-testid={props.testId}
          aria-invalid={error ? true : undefined}
          aria-describedby={describedBy(ids, { label, hint, error })}
          onChange={(event) => choose(event.currentTarget.value)}
        >
          {value === undefined && (
            <option value="" disabled>
              {props.nothing ?? ''}
            </option>
          )}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
        <Icon name="down" size={24} />
      </span>
    </FieldFrame>
  );
};
