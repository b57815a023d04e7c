import type { SetLine } from '../../../domain/label/label-layout.ts';

export interface SetLinesProps {
  readonly x: number;
  readonly lines: readonly SetLine[];
  /** How many of the texts, from the first on, are heavy. */
  readonly heavy: number;
}

/** Lines of a label as they were set. */
export const SetLines = ({ x, lines, heavy }: SetLinesProps) => (
  <>
    {lines.map(({ text, baseline, size, of }) => (
      <text
        key={`${of} ${baseline}`}
        class={of < heavy ? 'label-heavy' : 'label-plain'}
        x={x}
        y={baseline}
        font-size={size}
      >
        {text}
      </text>
    ))}
  </>
);
