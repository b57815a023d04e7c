import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { peopleWords as words } from '../../words/people-words.ts';
import { type DayDraft, dayProblem, isOff, likeMonday } from './person-draft.ts';

export interface WeekFieldProps {
  readonly week: readonly DayDraft[];
  readonly onWeek: (week: readonly DayDraft[]) => void;
  readonly error: string | undefined;
}

/** Seven days with their hours; a day that is empty is off. */
export const WeekField = ({ week, onWeek, error }: WeekFieldProps) => {
  const [monday] = week;
  return (
    <div class="set-up-week" data-testid="person-week">
      <p class="field-hint">{words.dayHint}</p>
      {week.map((day, at) => (
        <WeekDay
          key={words.weekdays[at]}
          weekday={words.weekdays[at] ?? ''}
          at={at}
          day={day}
          // What is wrong with one day stands at that day, once a save was tried.
          error={error === undefined ? undefined : dayProblem(day)}
          onDay={(part) => onWeek(week.map((each, place) => (place === at ? { ...each, ...part } : each)))}
        />
      ))}
      {error !== undefined && week.every(isOff) && (
        <p class="set-up-week-none" role="alert">
          {error}
        </p>
      )}
      {monday && !isOff(monday) && (
        <PressButton
          tone="quiet"
          label={words.sameAsMonday}
          onAct={() => onWeek(likeMonday(week))}
          testId="week-like-monday"
        />
      )}
    </div>
  );
};

interface WeekDayProps {
  readonly weekday: string;
  readonly at: number;
  readonly day: DayDraft;
  readonly error: string | undefined;
  readonly onDay: (part: Partial<DayDraft>) => void;
}

const WeekDay = ({ weekday, at, day, error, onDay }: WeekDayProps) => (
  <div class="set-up-weekday">
    <Field
      label={words.fromOf(weekday)}
      kind="time"
      value={day.from}
      onText={(from) => onDay({ from })}
      error={error}
      testId={`week-from-${at}`}
    />
    <Field
      label={words.toOf(weekday)}
      kind="time"
      value={day.to}
      onText={(to) => onDay({ to })}
      testId={`week-to-${at}`}
    />
    <Field
      label={words.breakOf(weekday)}
      kind="number"
      value={day.breaks}
      onText={(breaks) => onDay({ breaks })}
      testId={`week-break-${at}`}
    />
  </div>
);
