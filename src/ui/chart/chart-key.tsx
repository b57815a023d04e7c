import type { ChartProps, ChartSeries } from './chart-props.ts';
import { flaggedSeries, type SeriesLook, seriesLooks, shapePath } from './series-look.ts';

/** A small picture of how a series is drawn: narrow for points alone. */
const Sample = ({ drawn, look }: { drawn: ChartSeries['drawn']; look: SeriesLook }) => (
  <svg
    class="chart-sample"
    width={drawn === 'points' ? 28 : 56}
    height="26"
    aria-hidden="true"
    focusable="false"
  >
    {drawn === 'bars' && <path class="chart-bars" d="M6 25V12H18V25ZM22 25V4H34V25ZM38 25V16H50V25Z" />}
    {drawn === 'steps' && (
      <path class="chart-stroke" d="M2 21H20V13H38V5H54" stroke-dasharray={look.dash.join(' ')} />
    )}
    {(drawn === 'line' || drawn === 'dashed' || drawn === 'line-points') && (
      <path class="chart-stroke" d="M0 13H56" stroke-dasharray={look.dash.join(' ')} />
    )}
    {look.shape && (
      <path class="chart-solid chart-rim" d={shapePath(look.shape, drawn === 'points' ? 14 : 28, 13, 8)} />
    )}
  </svg>
);

/** Which line is which, drawn as it is in the chart; areas carry their names themselves. */
export const ChartKey = ({ series, band, flagged, texts }: ChartProps) => {
  const looks = seriesLooks(series);
  return (
    <ul class="chart-key">
      {series.map(({ key, label, drawn, tone }, nth) =>
        drawn === 'area' ? null : (
          <li key={key} data-tone={tone}>
            <Sample drawn={drawn} look={looks[nth] ?? { dash: [], shape: undefined }} />
            {label}
          </li>
        ),
      )}
      {band && (
        <li>
          <svg class="chart-sample" width="56" height="26" aria-hidden="true" focusable="false">
            <rect class="chart-band" x="0" y="4" width="56" height="18" />
            <path class="chart-band-edge" d="M0 4H56M0 22H56" />
          </svg>
          {band.label}
        </li>
      )}
      {texts.flagged && flagged?.length && flaggedSeries(series) >= 0 ? (
        <li data-tone="flaw">
          <svg class="chart-sample" width="28" height="26" aria-hidden="true" focusable="false">
            <path class="chart-solid" d={shapePath('strange', 14, 13, 7)} />
          </svg>
          {texts.flagged}
        </li>
      ) : null}
    </ul>
  );
};
