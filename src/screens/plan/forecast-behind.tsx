import type { ForecastHistory } from '../../domain/plan/forecast/forecast-history.ts';
import type { PlanModel } from '../../domain/plan/forecast/plan-model.ts';
import type { Registers } from '../../domain/shop/registers.ts';
import { Disclosure } from '../../ui/notice/disclosure.tsx';
import { Panel } from '../../ui/panel/panel.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { type Column, DataTable } from '../../ui/table/data-table.tsx';
import { InTurn } from '../../ui/turn/in-turn.tsx';
import { forecastWords as words } from '../../words/forecast-words.ts';
import { nameOf } from '../../words/names.ts';
import { wholeNumber } from '../../words/number-words.ts';
import { goTo } from '../parts/address.ts';
import { useSession, useShop } from '../parts/app-context.ts';
import { type PlanAbout, type StageBehind, stagesBehind } from './forecast-view.ts';
import { minutesOfWeek, shopHours } from './targets-view.ts';

export interface ForecastBehindProps {
  readonly plan: PlanModel;
  readonly history: ForecastHistory | null;
  readonly about: PlanAbout;
  /** How often the plan was worked off. */
  readonly times: number;
}

/** What a forecast rests on: hours, places, times, chances and pace, and which of them are guesses. */
export const ForecastBehind = ({ plan, history, about, times }: ForecastBehindProps) => {
  const { registers } = useShop();
  const hours = shopHours(registers);
  const minutes = minutesOfWeek(hours, useSession().today()) ?? 0;
  const isGuess = (history?.days.filter(({ usual }) => usual > 0).length ?? 0) < 3;
  return (
    <Panel title={words.behind} lead={words.behindLead} testId="forecast-behind">
      <div class="plan-block">
        <ul class="forecast-lines">
          <li>{words.hoursLine(plan.people.length, minutes)}</li>
          {hours.unsaid.length > 0 && <li class="plan-name">{words.unsaid(hours.unsaid.join(', '))}</li>}
          <li data-testid="forecast-pace">{words.pace(plan.pace.median, isGuess)}</li>
          <li>{words.times(times)}</li>
          {about.notes.map((note) => (
            <li key={JSON.stringify(note)} class="plan-name">
              {words.note(note, {
                stage: nameOf(registers, { register: 'stage', id: note.stage }),
                variant: 'variant' in note ? variantName(registers, note.variant) : '',
              })}
            </li>
          ))}
        </ul>
        {plan.resources.length > 0 && (
          <DataTable
            caption={words.places}
            columns={[
              { key: 'name', head: words.resource, cell: ({ name }) => name },
              {
                key: 'capacity',
                head: words.capacity,
                numeric: true,
                cell: ({ capacity }) => (capacity === null ? words.noLimit : wholeNumber(capacity)),
              },
            ]}
            rows={plan.resources}
            rowKey={({ name }) => name}
          />
        )}
        {history && (
          <Disclosure summary={words.stages} testId="forecast-stages">
            <InTurn>
              <p class="plan-note">{words.allGuess}</p>
              <DataTable
                caption={words.stages}
                captionUnseen
                columns={stageColumns((id) => nameOf(registers, { register: 'stage', id }))}
                rows={stagesBehind(plan, { ids: about.stages, history })}
                rowKey={({ stage }) => stage}
              />
            </InTurn>
          </Disclosure>
        )}
        <p class="plan-note">{words.rule}</p>
        <div class="plan-acts">
          <PressButton icon="hold" label={words.toTimes} onAct={() => goTo('yield', 'time')} />
          <PressButton icon="yield" label={words.toChances} onAct={() => goTo('yield', 'chances')} />
        </div>
      </div>
    </Panel>
  );
};

const variantName = (registers: Registers, key: string) =>
  nameOf(registers, { register: 'variant', id: key.slice(key.indexOf('/') + 1) });

/** A figure, and whether it is a guess. */
const guessed = (shown: string, seen: number) => (seen === 0 ? `${shown} (${words.guess})` : shown);

function stageColumns(stageName: (id: string) => string): readonly Column<StageBehind>[] {
  return [
    { key: 'stage', head: words.stage, cell: ({ stage }) => stageName(stage) },
    {
      key: 'minutes',
      head: words.minutesEach,
      numeric: true,
      cell: ({ minutes, timed }) => guessed(words.minutes(minutes), timed),
    },
    { key: 'timed', head: words.timed, numeric: true, cell: ({ timed }) => wholeNumber(timed) },
    {
      key: 'lost',
      head: words.lost,
      numeric: true,
      cell: ({ lost, tried }) => guessed(words.chanceShown(lost), tried),
    },
    { key: 'back', head: words.back, numeric: true, cell: ({ back }) => words.chanceShown(back) },
    { key: 'tried', head: words.tried, numeric: true, cell: ({ tried }) => wholeNumber(tried) },
    {
      key: 'cure',
      head: words.cures,
      numeric: true,
      cell: ({ cureMinutes }) => (cureMinutes === null ? '' : words.cureTime(cureMinutes)),
    },
  ];
}
