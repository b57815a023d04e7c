import './share.css';

export type ShareTone = 'plain' | 'flaw' | 'saved' | 'copper';

export interface ShareBarProps {
  label: string;
  part: number;
  whole: number;
  /** The share in words, such as a per cent; the screen decides how many places it is worth. */
  shown: string;
  /** Ends of an interval, as shares of 1. */
  low?: number | undefined;
  high?: number | undefined;
  tone?: ShareTone | undefined;
  testId?: string | undefined;
}

/** A share as a length, with its words; an interval is drawn as a bracket across it. */
export const ShareBar = ({ label, part, whole, shown, low, high, tone = 'plain', testId }: ShareBarProps) => {
  const share = whole > 0 ? Math.min(1, Math.max(0, part / whole)) : 0;
  return (
    <div class="share" data-tone={tone} data-testid={testId}>
      <span class="share-label">{label}</span>
      <span class="share-shown figures">{shown}</span>
      <svg
        class="share-bar"
        viewBox="0 0 100 10"
        preserveAspectRatio="none"
        aria-hidden="true"
        focusable="false"
      >
        <rect class="share-whole" width="100" height="10" />
        <rect class="share-part" width={100 * share} height="10" />
        {low !== undefined && high !== undefined && (
          <rect class="share-interval" x={100 * low} width={100 * (high - low)} y="3" height="4" />
        )}
      </svg>
    </div>
  );
};
