import '../share/share.css';
import './difference-bar.css';
import './print.css';
import type { ShareTone } from '../share/share-bar.tsx';

export interface DifferenceBarProps {
  label: string;
  /** −1 to 1. */
  value: number;
  /** Ends of the interval, −1 to 1. */
  low: number;
  high: number;
  /** What half the bar stands for, above 0; an interval that reaches further ends in a point. */
  most: number;
  /** The difference in words. */
  shown: string;
  /** What stands at the two sides of zero, in a word or two. */
  ends?: { below: string; above: string } | undefined;
  tone?: ShareTone | undefined;
  testId?: string | undefined;
}

/** Where a difference lies along the bar, 0 to 1: zero in the middle. */
const placeOf = (difference: number, most: number): number =>
  most > 0 ? Math.min(1, Math.max(0, 0.5 + difference / (2 * most))) : 0.5;

const percent = (share: number): string => `${100 * share}%`;

/** One end of the interval: a stop, or a point where it goes on beyond the bar. */
const End = ({ at, beyond, turn }: { at: number; beyond: boolean; turn: 1 | -1 }) =>
  beyond ? (
    <svg x={percent(at)} y="30" overflow="visible" class="difference-point" aria-hidden="true">
      <path d={`M${-10 * turn} -8L0 0L${-10 * turn} 8`} />
    </svg>
  ) : (
    <line x1={percent(at)} x2={percent(at)} y1="23" y2="37" />
  );

/** A difference as a length to one side of zero, with its words; its interval lies under it as a bracket. */
export const DifferenceBar = (props: DifferenceBarProps) => {
  const { label, value, low, high, most, shown, ends, tone = 'plain', testId } = props;
  const place = placeOf(value, most);
  const from = placeOf(low, most);
  const to = placeOf(high, most);
  return (
    <div class="share" data-tone={tone} data-testid={testId}>
      <span class="share-label">{label}</span>
      <span class="share-shown figures">{shown}</span>
      <svg class="share-bar" aria-hidden="true" focusable="false">
        <rect class="share-whole" width="100%" height="22" />
        <rect
          class="share-part"
          x={percent(Math.min(0.5, place))}
          width={percent(Math.abs(place - 0.5))}
          height="22"
        />
        <line class="difference-zero" x1="50%" x2="50%" y1="-5" y2="40" />
        <g class="share-interval">
          <line x1={percent(from)} x2={percent(to)} y1="30" y2="30" />
          <End at={from} beyond={low < -most} turn={-1} />
          <End at={to} beyond={high > most} turn={1} />
        </g>
      </svg>
      {ends && (
        <span class="difference-ends">
          <span>{ends.below}</span>
          <span>{ends.above}</span>
        </span>
      )}
    </div>
  );
};
