import './day.css';
import { readId, type ShopDay, shopDayText } from '../../domain/log/ids.ts';
import { dayAfter, usualDayStart } from '../../domain/log/zone.ts';
import { type DayReport, dayReport } from '../../domain/rollup/day-report.ts';
import { factOf } from '../../domain/shop/registers.ts';
import { PressButton } from '../../ui/press/press-button.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { stillDrawing } from '../../ui/turn/turns.ts';
import { dayWords as dayName } from '../../words/date-words.ts';
import { dayWords as words } from '../../words/day-words.ts';
import { tableWords } from '../../words/table-words.ts';
import { updateWords } from '../../words/update-words.ts';
import { address, goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { DayCopies } from '../parts/files/day-copies.tsx';
import { onDemand } from '../parts/on-demand.tsx';
import { TableButton } from '../parts/table-button.tsx';
import { UpdateOffer } from '../parts/update-offer.tsx';
import { useNow } from '../parts/use-now.ts';
import { ChecksPanel } from './checks-panel.tsx';
import { ClockMark, MarkedDays } from './clock-mark.tsx';
import { DayFigures, DayFlaws, DayStages } from './day-tables.tsx';
import { HoldsPanel } from './holds-panel.tsx';
import { SamplesPanel } from './samples-panel.tsx';

const dustPanel = onDemand(async () => (await import('./dust-panel.tsx')).DustPanel, null);

/** The end of the day: what was done and lost, what cures overnight, which counts to check. */
export const DayPlace = () => {
  const session = useSession();
  const shop = useShop();
  const now = useNow();
  const today = session.today();
  const day = readId(shopDayText, address.value.rest[0]) ?? today;
  const report = dayReport(shop, day);
  const startHour = factOf(shop.registers, { register: 'shop', id: 'shop' })?.dayStartHour ?? usualDayStart;
  return (
    <main class="day" aria-busy={stillDrawing}>
      <DayHead day={day} today={today} />
      <UpdateOffer lead={updateWords.dayLead} testId="update-offer" />
      <ClockMark taps={report.doubtful} />
      {day === today && <ChecksPanel />}
      <DayFigures report={report} />
      {day === today && (
        <InTurn>
          <HoldsPanel now={now} />
        </InTurn>
      )}
      <InTurn>
        <DayStages report={report} />
      </InTurn>
      <InTurn>
        <DayFlaws report={report} />
        <SamplesPanel samples={report.samples} />
      </InTurn>
      <InTurn>
        <dustPanel.Screen day={day} />
      </InTurn>
      {day === today && (
        <InTurn>
          <DayCopies />
        </InTurn>
      )}
      <InTurn>
        <DayNotes report={report} startHour={startHour} />
        <MarkedDays day={day} />
      </InTurn>
    </main>
  );
};

const DayHead = ({ day, today }: { day: ShopDay; today: ShopDay }) => (
  <header class="day-head">
    <h1>
      {words.title}: {day === today ? `${words.today}, ` : ''}
      {dayName(day)}
    </h1>
    <div class="day-ways">
      <PressButton
        icon="back"
        label={words.before}
        onAct={() => goTo('day', dayAfter(day, -1))}
        testId="day-before"
      />
      {day < today && (
        <PressButton icon="next" label={words.after} onAct={() => goTo('day', dayAfter(day, 1))} />
      )}
      {day !== today && <PressButton label={words.toToday} onAct={() => goTo('day')} />}
      <PressButton tone="quiet" label={words.print} onAct={() => print()} />
      <TableButton table="days" tone="quiet" label={tableWords.save} />
    </div>
  </header>
);

const DayNotes = ({ report, startHour }: { report: DayReport; startHour: number }) => (
  <p>
    {words.averageOver(report.workingDays)} {words.startsAt(startHour)}
  </p>
);
