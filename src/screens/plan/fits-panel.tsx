import { useState } from 'preact/hooks';
import type { BatchTargets } from '../../domain/rollup/batch-targets.ts';
import type { StageTime } from '../../domain/study/piece-times.ts';
import { Field } from '../../ui/field/field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { reviewWords as words } from '../../words/review-words.ts';
import { studyWords } from '../../words/study-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import type { ReviewNames } from './review-tables.ts';
import { type Fits, fitsOf, type NextRow, readSpan } from './review-view.ts';
import { minutesOfWeek, shopHours } from './targets-view.ts';

export interface FitsPanelProps {
  readonly rows: readonly NextRow[];
  readonly chosen: BatchTargets;
  readonly times: readonly StageTime[];
  readonly names: ReviewNames;
}

/** How large the next batch may be for the hours that shall go into it. */
export const FitsPanel = ({ rows, chosen, times, names }: FitsPanelProps) => {
  const { registers } = useShop();
  const today = useSession().today();
  const [hours, setHours] = useState(() => {
    const week = Math.floor((minutesOfWeek(shopHours(registers), today) ?? 0) / 60);
    return week > 0 ? String(week) : '';
  });
  const [weeks, setWeeks] = useState('4');
  const [hoursAWeek, span] = [readSpan(hours), readSpan(weeks)];
  const fits =
    hoursAWeek === undefined || span === undefined
      ? undefined
      : fitsOf(rows, { chosen, times, hoursAWeek, weeks: span });
  return (
    <Panel
      title={words.fits}
      lead={words.fitsLead}
      actions={<Means label={studyWords.means}>{words.fitsMeans}</Means>}
      testId="review-fits"
    >
      <div class="plan-fields">
        <Field
          label={words.hoursAWeek}
          kind="number"
          unit="h"
          value={hours}
          onText={setHours}
          error={hours.trim() !== '' && hoursAWeek === undefined ? words.badNumber : undefined}
          testId="fits-hours"
        />
        <Field
          label={words.weeks}
          kind="number"
          value={weeks}
          onText={setWeeks}
          error={span === undefined ? words.badNumber : undefined}
          testId="fits-weeks"
        />
      </div>
      <p class="plan-answer" role="status" data-testid="fits-answer">
        {fits && fitsWords(fits, names)}
      </p>
    </Panel>
  );
};

function fitsWords(fits: Fits, names: ReviewNames): string {
  switch (fits.kind) {
    case 'fits':
      return words.fitsAnswer(fits.pieces);
    case 'untimed':
      return words.fitsUnknown(fits.stages.map(names.stage).join(', '));
    case 'nothing':
      return words.fitsNothing;
  }
}
