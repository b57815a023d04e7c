import './share.css';

/** What a bar means: nothing special, a loss, a gain, the one that is spoken of. */
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

/** A length as an attribute of a drawing: the page's policy forbids styles written into it. */
const percent = (share: number): string => `${100 * Math.min(1, Math.max(0, share))}%`;

/** A share as a length, with its words; an interval lies under it as a bracket. */
export const ShareBar = ({ label, part, whole, shown, low, high, tone = 'plain', testId }: ShareBarProps) => (
  <div class="share" data-tone={tone} data-testid={testId}>
    <span class="share-label">{label}</span>
    <span class="share-shown figures">{shown}</span>
    <svg class="share-bar" aria-hidden="true" focusable="false">
      <rect class="share-whole" width="100%" height="22" />
      <rect class="share-part" width={percent(whole > 0 ? part / whole : 0)} height="22" />
      {low !== undefined && high !== undefined && (
        <g class="share-interval">
          <line x1={percent(low)} x2={percent(high)} y1="30" y2="30" />
          <line x1={percent(low)} x2={percent(low)} y1="24" y2="36" />
          <line x1={percent(high)} x2={percent(high)} y1="24" y2="36" />
        </g>
      )}
    </svg>
  </div>
);
