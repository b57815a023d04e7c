import { tidyText } from '../../../domain/set-up/text.ts';
import { longestName } from '../../../domain/set-up/text-schema.ts';
import { Field } from '../../../ui/field/field.tsx';
import { setUpWords as words } from '../../../words/set-up-words.ts';

export interface NameFieldProps {
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly error: string | undefined;
  readonly testId: string;
  readonly label?: string | undefined;
  readonly hint?: string | undefined;
}

/** A name of up to 80 characters; a longer one stays as typed and the reason stands beside it. */
export const NameField = ({ name, onName, error, testId, label = words.name, hint }: NameFieldProps) => (
  <Field
    label={label}
    hint={hint}
    value={name}
    onText={onName}
    longest={longestName}
    tooLong={() => words.tooLong([...tidyText(name)].length, longestName)}
    error={error}
    testId={testId}
  />
);
