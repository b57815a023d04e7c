import './share.css';
import type { ShareTone } from './share-bar.tsx';

export interface BarRowProps {
  label: string;
  value: number;
  /** What a full bar stands for. */
  most: number;
  shown: string;
  detail?: string | undefined;
  tone?: ShareTone | undefined;
  testId?: string | undefined;
}

/** One bar of several that are compared with each other. A span, so that it may stand in a button. */
export const BarRow = ({ label, value, most, shown, detail, tone = 'plain', testId }: BarRowProps) => {
  const share = most > 0 ? Math.min(1, Math.max(0, value / most)) : 0;
  return (
    <span class="share" data-tone={tone} data-testid={testId}>
      <span class="share-label">
        {label}
        {detail && <span class="share-detail"> {detail}</span>}
      </span>
      <span class="share-shown figures">{shown}</span>
      <svg class="share-bar" data-shape="row" aria-hidden="true" focusable="false">
        <rect class="share-part" width={`${100 * share}%`} height="22" />
        <line class="share-foot" x1="0" x2="0" y1="-4" y2="26" />
      </svg>
    </span>
  );
};
