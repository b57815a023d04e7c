import { useMemo } from 'preact/hooks';
import { labelReading, signsToBear } from '../../../domain/label/label-reading.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { Notice } from '../../../ui/notice/notice.tsx';
import { readingWords, labelWords as words } from '../../../words/label-words.ts';
import { useSession } from '../../parts/app-context.ts';
import type { LabelFace } from './label-sheet.tsx';
import { type TrayLabel, trayLabel } from './label-view.ts';
import { type KeptSize, OnLabels } from './on-labels.tsx';
import { useTextMeasures } from './text-measures.ts';
import { TrayLabelFace } from './tray-label-face.tsx';

const kept: KeptSize = { id: undefined };

/** Labels for the chosen trays to bear. */
export const LabelsToPrint = ({ trays }: { trays: readonly TrayRecord[] }) => {
  // The shop behind the view changes in place: the view is another one when it has.
  const view = useSession().view.value;
  const measures = useTextMeasures();
  const labels = useMemo(() => trays.map((tray) => trayLabel(view.shop, tray)), [view, trays]);
  const face = useMemo<LabelFace<TrayLabel> | null>(
    () => measures && ((label, size) => <TrayLabelFace {...{ label, size, measures }} />),
    [measures],
  );
  return (
    <OnLabels
      title={words.labels}
      kept={kept}
      things={labels}
      face={face}
      judge={(size) => {
        const reading = readingWords(labelReading(size, signsToBear(trays)));
        return {
          notice: reading !== null && <Notice tone="warn" title={reading} testId="print-small" />,
        };
      }}
    />
  );
};
