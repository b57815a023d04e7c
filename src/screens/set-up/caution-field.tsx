import { longestNote } from '../../domain/set-up/text-schema.ts';
import { Field } from '../../ui/field/field.tsx';
import { setUpWords as words } from '../../words/set-up-words.ts';

export interface CautionFieldProps {
  readonly caution: string;
  readonly onCaution: (caution: string) => void;
  readonly error: string | undefined;
  readonly testId: string;
}

/** What to beware of at a stage or with a wood; it may stay empty. */
export const CautionField = ({ caution, onCaution, error, testId }: CautionFieldProps) => (
  <Field
    label={words.caution}
    hint={words.cautionHint}
    optional={words.optional}
    rows={5}
    value={caution}
    onText={onCaution}
    longest={longestNote}
    tooLong={(length) => words.tooLong(length, longestNote)}
    error={error}
    testId={testId}
  />
);
