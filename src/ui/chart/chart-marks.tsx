import type { ChartProps } from './chart-props.ts';

/**
 * The labels of the marks, with the numbers that stand for them in the chart; for screen readers only where the chart
 * carries the labels itself.
 */
export const ChartMarks = ({ props, seen }: { props: ChartProps; seen: boolean }) =>
  props.marks?.length ? (
    <ol class={seen ? 'chart-marks' : 'unseen'}>
      {props.marks.map(({ at, label }, nth) => (
        <li key={at}>
          <span class="chart-mark" aria-hidden="true">
            {nth + 1}
          </span>
          <span>
            {label} ({props.x.show(at)})
          </span>
        </li>
      ))}
    </ol>
  ) : null;
