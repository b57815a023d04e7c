import { useState } from 'preact/hooks';
import { readDay } from '../../domain/command/calendar-day.ts';
import { mostDaysOff, type PersonFact } from '../../domain/set-up/facts.ts';
import { Field } from '../../ui/field/field.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { dayWords } from '../../words/date-words.ts';
import { peopleWords as words } from '../../words/people-words.ts';

type DaysOff = NonNullable<PersonFact['daysOff']>;

export interface DaysOffFieldProps {
  readonly daysOff: DaysOff;
  readonly onDaysOff: (daysOff: DaysOff) => void;
}

/** Stretches of days without work, the earliest first. */
export const DaysOffField = ({ daysOff, onDaysOff }: DaysOffFieldProps) => {
  const [typed, setTyped] = useState({ from: '', to: '' });
  const [errors, setErrors] = useState<{ from?: string | undefined; to?: string | undefined }>({});
  const add = () => {
    const [from, last] = [readDay(typed.from), readDay(typed.to)];
    const to = last === null ? from : last;
    const problems = {
      from: from ? undefined : words.badDay,
      to: to === undefined ? words.badDay : from && to && to < from ? words.badRange : undefined,
    };
    setErrors(problems);
    if (!from || !to || problems.to !== undefined) return;
    onDaysOff([...daysOff, { from, to }].sort((a, b) => (a.from < b.from ? -1 : 1)));
    setTyped({ from: '', to: '' });
  };
  return (
    <fieldset class="set-up-bill" data-testid="person-days-off">
      <legend class="field-label">{words.daysOff}</legend>
      <p class="field-hint">{daysOff.length >= mostDaysOff ? words.daysOffFull : words.daysOffLead}</p>
      {daysOff.length === 0 ? (
        <p>{words.noDaysOff}</p>
      ) : (
        <ul class="set-up-route">
          {daysOff.map(({ from, to }, place) => (
            <li key={`${from} ${to} ${place}`}>
              <span class="set-up-stage">{words.stretchOf(dayWords(from), dayWords(to))}</span>
              <PressButton
                tone="quiet"
                label={words.takeAway}
                name={`${words.takeAway}: ${words.stretchOf(dayWords(from), dayWords(to))}`}
                onAct={() => onDaysOff(daysOff.filter((_, at) => at !== place))}
                testId={`day-off-away-${place}`}
              />
            </li>
          ))}
        </ul>
      )}
      {daysOff.length < mostDaysOff && (
        <>
          <div class="set-up-pair">
            <Field
              label={words.firstDay}
              kind="date"
              value={typed.from}
              onText={(from) => setTyped({ ...typed, from })}
              onEnter={add}
              error={errors.from}
              testId="day-off-from"
            />
            <Field
              label={words.lastDay}
              hint={words.lastDayHint}
              kind="date"
              value={typed.to}
              onText={(to) => setTyped({ ...typed, to })}
              onEnter={add}
              error={errors.to}
              testId="day-off-to"
            />
          </div>
          <PressButton icon="plus" label={words.addDaysOff} onAct={add} testId="day-off-add" />
        </>
      )}
    </fieldset>
  );
};
