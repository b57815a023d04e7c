import { useState } from 'preact/hooks';
import type { ShopDay } from '../../domain/log/ids.ts';
import { minutesOfGood } from '../../domain/plan/forecast/minutes-of-good.ts';
import type { PlanModel } from '../../domain/plan/forecast/plan-model.ts';
import { batchThatFits } from '../../domain/plan/purchase/batch-that-fits.ts';
import { daysBetween } from '../../domain/plan/working-hours.ts';
import { Field } from '../../ui/field/field.tsx';
import { Means } from '../../ui/notice/means.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { studyWords } from '../../words/study-words.ts';
import { whatIfWords as words } from '../../words/what-if-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { minutesOfWeek, shopHours } from './targets-view.ts';
import { numberTyped } from './what-if-view.ts';

/** How many good pieces the hours are enough for. */
export const PlanFitsPanel = ({ plan, due }: { plan: PlanModel; due: ShopDay | null }) => {
  const today = useSession().today();
  const week = minutesOfWeek(shopHours(useShop().registers), today) ?? 0;
  const [hours, setHours] = useState(String(Math.round(week / 60)));
  const [weeks, setWeeks] = useState(
    String(due === null || due <= today ? 4 : Math.max(1, Math.round(daysBetween(today, due) / 7))),
  );
  const minutesEach = minutesOfGood(plan);
  if (!minutesEach) return null;
  const [aWeek, many] = [numberTyped(hours), numberTyped(weeks)];
  const fit = aWeek && many ? batchThatFits({ minutesEach, hoursAWeek: aWeek, weeks: many }) : undefined;
  return (
    <Panel
      title={words.fits}
      lead={words.fitsLead}
      actions={<Means label={studyWords.means}>{words.fitsMeans}</Means>}
      testId="fits"
    >
      <div class="plan-fields">
        <Field
          label={words.weekHours}
          kind="number"
          unit="h"
          value={hours}
          onText={setHours}
          error={aWeek ? undefined : words.badNumber}
          testId="fits-hours"
        />
        <Field
          label={words.weeks}
          kind="number"
          value={weeks}
          onText={setWeeks}
          error={many ? undefined : words.badNumber}
          testId="fits-weeks"
        />
      </div>
      <p class="plan-note">{words.eachTakes(minutesEach.low, minutesEach.likely, minutesEach.high)}</p>
      {fit && (
        <p class="plan-answer" role="status" data-testid="fits-answer" data-fits={fit.likely}>
          {words.fit(fit.low, fit.likely, fit.high)}
        </p>
      )}
    </Panel>
  );
};
