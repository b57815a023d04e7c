import '../table/data-table.css';
import './heat-table.css';
import './print.css';
import { useState } from 'preact/hooks';
import { nextCell } from './heat-keys.ts';
import { heatOf } from './heat-of.ts';

/** A row or a column. */
interface HeatLine {
  id: string;
  label: string;
}

export interface HeatCell {
  /** 0 to 1. */
  share: number;
  /** The share in words, such as a per cent. */
  shown: string;
  /** A smaller second line. */
  detail?: string | undefined;
  /** The whole of it for a screen reader: which row and column, and how much. Must contain what is shown. */
  name: string;
}

export interface HeatTableProps {
  caption: string;
  /** Hides the caption from the eye where a panel's title says the same. */
  captionUnseen?: boolean | undefined;
  /** What heat means: a loss when left out, or nothing bad. */
  tone?: 'flaw' | 'plain' | undefined;
  /** Heads the first column. */
  corner: string;
  rows: readonly HeatLine[];
  cols: readonly HeatLine[];
  /** Nothing where the row and the column do not meet. */
  cell: (row: string, col: string) => HeatCell | null;
  /** The share that is drawn hottest, above 0; what is beyond it looks the same. */
  most: number;
  /** Makes each cell a button: one stop of the Tab key, and arrow keys between them. */
  onPick?: ((row: string, col: string) => void) | undefined;
  testId?: string | undefined;
}

const Content = ({ cell, most }: { cell: HeatCell; most: number }) => (
  <>
    <span class="heat-shown figures">{cell.shown}</span>
    {cell.detail && <span class="heat-detail">{cell.detail}</span>}
    <svg class="heat-bar" aria-hidden="true" focusable="false">
      <rect
        class="heat-length"
        width={`${most > 0 ? 100 * Math.min(1, Math.max(0, cell.share / most)) : 0}%`}
        height="10"
      />
      <line class="heat-foot" x1="0" x2="100%" y1="11" y2="11" />
    </svg>
  </>
);

interface CellProps {
  cell: HeatCell | null;
  most: number;
  onPick: (() => void) | undefined;
  /** The Tab key stops here. */
  isStop: boolean;
  onFocus: () => void;
}

const Cell = ({ cell, most, onPick, isStop, onFocus }: CellProps) => {
  if (!cell) return <td class="heat-none">–</td>;
  return (
    <td class="heat-cell" data-heat={heatOf(cell.share, most)}>
      {onPick ? (
        <button
          type="button"
          class="heat-box"
          aria-label={cell.name}
          tabIndex={isStop ? 0 : -1}
          onFocus={onFocus}
          onClick={onPick}
          onKeyDown={(event) => {
            const next = nextCell(event.currentTarget, event.key);
            if (!next) return;
            event.preventDefault();
            next.focus();
          }}
        >
          <Content cell={cell} most={most} />
        </button>
      ) : (
        <>
          <span class="unseen">{cell.name}</span>
          <span class="heat-box" aria-hidden="true">
            <Content cell={cell} most={most} />
          </span>
        </>
      )}
    </td>
  );
};

const keyOf = (row: HeatLine, col: HeatLine) => `${row.id}|${col.id}`;

/** Shares where rows and columns meet: the larger, the hotter, and the longer the bar at the foot of the cell. */
export const HeatTable = ({
  caption,
  captionUnseen,
  tone = 'flaw',
  corner,
  rows,
  cols,
  cell,
  most,
  onPick,
  testId,
}: HeatTableProps) => {
  const [focused, setFocused] = useState('');
  const keys = rows.flatMap((row) => cols.flatMap((col) => (cell(row.id, col.id) ? [keyOf(row, col)] : [])));
  const stop = keys.includes(focused) ? focused : keys[0];
  return (
    // biome-ignore lint/a11y/useSemanticElements: no set of fields, only a frame with a name
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a frame that scrolls must be reachable with the keyboard
    <div role="group" class="table-frame" data-testid={testId} aria-label={caption} tabIndex={0}>
      <table class="table heat" data-tone={tone}>
        <caption class={captionUnseen ? 'unseen' : 'table-caption'}>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{corner}</th>
            {cols.map((col) => (
              <th key={col.id} scope="col">
                {col.label}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.id}>
              <th scope="row">{row.label}</th>
              {cols.map((col) => (
                <Cell
                  key={col.id}
                  cell={cell(row.id, col.id)}
                  most={most}
                  onPick={onPick && (() => onPick(row.id, col.id))}
                  isStop={keyOf(row, col) === stop}
                  onFocus={() => setFocused(keyOf(row, col))}
                />
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
};
