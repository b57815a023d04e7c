import { readWholeNumber } from '../../domain/command/whole-number.ts';
import type { PersonFact, WorkDay } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { peopleWords as words } from '../../words/people-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';
import { priceText, readPrice } from '../parts/money.ts';

/** A day of the week as it is typed: times as HH:MM, minutes of breaks; empty times for a day off. */
export interface DayDraft {
  readonly from: string;
  readonly to: string;
  readonly breaks: string;
}

type DaysOff = NonNullable<PersonFact['daysOff']>;

/** A person as they are typed. */
export interface PersonDraft {
  readonly name: string;
  readonly hours: 'unsaid' | 'said';
  /** Seven, Monday first. */
  readonly week: readonly DayDraft[];
  readonly daysOff: DaysOff;
  readonly hourCost: string;
}

const offDay: DayDraft = { from: '', to: '', breaks: '' };

export function personDraftOf(person: PersonFact | undefined): PersonDraft {
  return {
    name: person?.name ?? '',
    hours: person?.week ? 'said' : 'unsaid',
    week: words.weekdays.map((_, at) => dayDraftOf(person?.week?.[at] ?? null)),
    daysOff: person?.daysOff ?? [],
    hourCost: priceText(person?.hourCost ?? null),
  };
}

function dayDraftOf(day: WorkDay | null): DayDraft {
  if (day === null) return offDay;
  return { from: timeText(day.from), to: timeText(day.to % 1440), breaks: String(day.breakMinutes) };
}

function timeText(minutes: number): string {
  return [Math.floor(minutes / 60), minutes % 60].map((part) => String(part).padStart(2, '0')).join(':');
}

export const isOff = ({ from, to }: DayDraft): boolean => from.trim() === '' && to.trim() === '';

/** What is wrong with a day of the week, or nothing. */
export function dayProblem(draft: DayDraft): string | undefined {
  const read = readWorkDay(draft);
  return typeof read === 'string' ? read : undefined;
}

/** A working day, null for one that is off, or what is wrong with it. */
function readWorkDay(draft: DayDraft): WorkDay | null | string {
  if (isOff(draft)) return null;
  const [from, end] = [readTime(draft.from), readTime(draft.to)];
  if (from === undefined || end === undefined || from === end) return words.badTime;
  const to = end > from ? end : end + 1440;
  const breaks = readWholeNumber(draft.breaks.trim() || '0', { least: 0, most: to - from - 1 });
  return breaks.ok && breaks.value < 1440 ? { from, to, breakMinutes: breaks.value } : words.badBreak;
}

/** Minutes since midnight. */
function readTime(typed: string): number | undefined {
  const [, hour, minute] = /^([01]?\d|2[0-3]):([0-5]\d)$/.exec(typed.trim()) ?? [];
  return hour === undefined || minute === undefined ? undefined : Number(hour) * 60 + Number(minute);
}

export function readPerson(draft: PersonDraft): Reading<Omit<PersonFact, 'retired'>, PersonDraft> {
  const isSaid = draft.hours === 'said';
  const days = draft.week.map(readWorkDay);
  const hourCost = readPrice(draft.hourCost);
  const problems = {
    name: nameProblem(draft.name),
    week: isSaid ? weekProblem(days) : undefined,
    hourCost: hourCost === undefined ? words.badHourCost : undefined,
  };
  return readingOf(problems, () => ({
    name: tidyText(draft.name),
    ...(isSaid && { week: days.map((day) => (typeof day === 'string' ? null : day)) }),
    ...(draft.daysOff.length > 0 && { daysOff: [...draft.daysOff] }),
    ...(hourCost != null && { hourCost }),
  }));
}

function weekProblem(days: readonly (WorkDay | null | string)[]): string | undefined {
  const wrong = days.find((day) => typeof day === 'string');
  if (typeof wrong === 'string') return wrong;
  return days.every((day) => day === null) ? words.noHours : undefined;
}

/** The week with Tuesday to Friday like Monday. */
export function likeMonday(week: readonly DayDraft[]): readonly DayDraft[] {
  const [monday = offDay] = week;
  return week.map((day, at) => (at > 0 && at < 5 ? monday : day));
}

/** Minutes that a usual week has; undefined where nobody has said. */
export function minutesAWeek({ week }: Pick<PersonFact, 'week'>): number | undefined {
  return week?.reduce((sum, day) => sum + (day ? Math.max(0, day.to - day.from - day.breakMinutes) : 0), 0);
}
