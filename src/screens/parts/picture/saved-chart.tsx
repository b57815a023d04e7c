import { Chart } from '../../../ui/chart/chart.tsx';
import type { ChartProps } from '../../../ui/chart/chart-props.ts';
import { SavePicture } from './save-picture.tsx';

/** A chart that can be saved as a picture, in which `lead` stands under the title. */
export const SavedChart = ({ lead, ...chart }: ChartProps & { lead?: string | undefined }) => (
  <Chart
    {...chart}
    foot={
      <SavePicture
        picture={() => ({ title: chart.title, lead, body: { kind: 'chart', chart } })}
        testId={chart.testId && `${chart.testId}-picture`}
      />
    }
  />
);
