import './big-figure.css';

export interface BigCodeProps {
  code: string;
  /** How it is read aloud, such as the thing it names and the code. */
  name: string;
  /** Signs in a group; at most 4. */
  group?: 2 | 3 | 4 | undefined;
  testId?: string | undefined;
}

const groupsOf = (code: string, size: number): readonly string[] =>
  code.match(new RegExp(`.{1,${size}}`, 'gu')) ?? [];

/** A code to be read from two metres, in groups of at most four signs. */
export const BigCode = ({ code, name, group = 4, testId }: BigCodeProps) => (
  <p class="big-code" data-testid={testId}>
    <span class="unseen">{name}</span>
    <span aria-hidden="true" class="big-code-signs" dir="ltr">
      {groupsOf(code, group).map((signs, place) => (
        <span key={`${place}-${signs}`}>{signs}</span>
      ))}
    </span>
  </p>
);
