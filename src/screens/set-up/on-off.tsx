import { useState } from 'preact/hooks';
import { ChoiceRow } from '../../ui/field/choice-row.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

export interface OnOffProps {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
  readonly hint?: string | undefined;
  /** Why it cannot be on. */
  readonly error?: string | undefined;
  readonly testId: string;
}

/** Something of the tablet that is on or off. */
export const OnOff = ({ label, on, onChange, hint, error, testId }: OnOffProps) => {
  // Drawn anew after each choice: what cannot be on must not look as if it were.
  const [, draw] = useState({});
  return (
    <ChoiceRow
      label={label}
      choices={[
        { value: 'on', label: words.on },
        { value: 'off', label: words.offSwitch },
      ]}
      value={on ? 'on' : 'off'}
      onChoose={(value) => {
        onChange(value === 'on');
        draw({});
      }}
      hint={hint}
      error={error}
      testId={testId}
    />
  );
};
