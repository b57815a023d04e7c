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

/** One bar of several that are compared with each other. */
export const BarRow = ({ label, value, most, shown, detail, tone = 'plain', testId }: BarRowProps) => (
  <div class="share" data-tone={tone} data-testid={testId}>
    <span class="share-label">
      {label}
      {detail && <span class="share-detail"> {detail}</span>}
    </span>
    <span class="share-shown figures">{shown}</span>
    <svg
      class="share-bar"
      viewBox="0 0 100 10"
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      <rect
        class="share-part"
        width={most > 0 ? Math.max(0, Math.min(100, (100 * value) / most)) : 0}
        height="10"
      />
    </svg>
  </div>
);
