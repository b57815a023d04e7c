import './big-figure.css';

export interface BigCountProps {
  /** Undefined was never counted and shows a dash; zero was counted. */
  count: number | undefined;
  label: string;
  /** What the count is out of. */
  of?: string | undefined;
  tone?: 'plain' | 'flaw' | 'saved' | undefined;
  testId?: string | undefined;
}

/** A running count to be read from two metres. */
export const BigCount = ({ count, label, of, tone = 'plain', testId }: BigCountProps) => (
  <p class="big-count" data-tone={tone} data-testid={testId}>
    <span class="big-count-figure figures">{count ?? '–'}</span>
    <span class="big-count-words">
      <span>{label}</span>
      {of && <span class="big-count-of">{of}</span>}
    </span>
  </p>
);
