import './pareto-bars.css';
import './print.css';
import { BarRow } from '../share/bar-row.tsx';
import type { ShareTone } from '../share/share-bar.tsx';

export interface ParetoRow {
  id: string;
  label: string;
  value: number;
  /** The value in words. */
  shown: string;
  detail?: string | undefined;
  /** Share of the whole that this row and those above it make up, 0 to 1. */
  running: number;
  /** That share in words. */
  runningShown: string;
}

export interface ParetoBarsProps {
  label: string;
  /** Worst first. */
  rows: readonly ParetoRow[];
  /** What a full bar stands for, above 0. */
  most: number;
  /** Makes each row a button. */
  onPick?: ((id: string) => void) | undefined;
  tone?: ShareTone | undefined;
  testId?: string | undefined;
}

const Row = ({ row, most, tone }: { row: ParetoRow; most: number; tone: ShareTone }) => {
  const end = `${100 * Math.min(1, Math.max(0, row.running))}%`;
  return (
    <>
      <BarRow
        label={row.label}
        value={row.value}
        most={most}
        shown={row.shown}
        detail={row.detail}
        tone={tone}
      />
      <span class="pareto-running">
        <svg class="pareto-line" aria-hidden="true" focusable="false">
          <line class="pareto-whole" x1="0" x2="100%" y1="9" y2="9" />
          <line class="pareto-so-far" x1="0" x2={end} y1="9" y2="9" />
          <circle class="pareto-end" cx={end} cy="9" r="8" />
        </svg>
        <span class="figures">{row.runningShown}</span>
      </span>
    </>
  );
};

/** What loses most, worst first: a bar each, and under it how much of the whole it makes up with those above it. */
export const ParetoBars = ({ label, rows, most, onPick, tone = 'flaw', testId }: ParetoBarsProps) => (
  <ol class="pareto" aria-label={label} data-testid={testId}>
    {rows.map((row) => (
      <li key={row.id} class="pareto-row">
        {onPick ? (
          <button type="button" class="pareto-pick" onClick={() => onPick(row.id)}>
            <Row row={row} most={most} tone={tone} />
          </button>
        ) : (
          <Row row={row} most={most} tone={tone} />
        )}
      </li>
    ))}
  </ol>
);
