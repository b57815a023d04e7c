import type { ShopDay } from '../../domain/log/ids.ts';
import { doubtfulDays } from '../../domain/rollup/day-report.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { dayWords as dayName } from '../../words/date-words.ts';
import { dayWords as words } from '../../words/day-words.ts';
import { goTo } from '../parts/address.ts';
import { useShop } from '../parts/app-context.ts';

/** The mark of a day whose taps were made, some of them, while the tablet's clock was in doubt. */
export const ClockMark = ({ taps }: { taps: number }) =>
  taps === 0 ? null : <Notice tone="warn" title={words.clockMark(taps)} testId="day-clock-mark" />;

/** Ways to the other days that bear the mark: a clock years off puts taps where no one would look for them. */
export const MarkedDays = ({ day }: { day: ShopDay }) => {
  const others = doubtfulDays(useShop()).filter((each) => each !== day);
  if (others.length === 0) return null;
  return (
    <Panel title={words.markedDays} lead={words.markedDaysLead}>
      <ul class="day-checks">
        {others.map((each) => (
          <li key={each}>
            <PressButton
              label={dayName(each)}
              onAct={() => goTo('day', each)}
              testId={`marked-day-${each}`}
            />
          </li>
        ))}
      </ul>
    </Panel>
  );
};
