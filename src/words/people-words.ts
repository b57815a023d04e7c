import { roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';

const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

/** Words of the people of the shop: their hours, days off and rate. */
export const peopleWords = inLanguage('peopleWords', {
  weekdays,
  hours: 'Hours of work',
  hoursHint: 'Plans rest on them: what a week has, and when a batch is done.',
  unsaid: 'Not said',
  unsaidDetail: 'plans do without this person',
  said: 'A week like this',
  from: 'From',
  to: 'To',
  breaks: 'Breaks',
  minutes: 'min',
  dayHint: 'Leave a day empty when it is off. An end before the start is past midnight.',
  sameAsMonday: 'Tuesday to Friday like Monday',
  badTime: 'Say from when to when.',
  badBreak: 'Minutes are a whole number, less than the day has.',
  noHours: 'Say at least one day.',
  fromOf: (weekday: string) => `${weekday}, from`,
  toOf: (weekday: string) => `${weekday}, to`,
  breakOf: (weekday: string) => `${weekday}, minutes of breaks`,

  daysOff: 'Days off',
  daysOffLead: 'Holidays and days elsewhere.',
  noDaysOff: 'None.',
  firstDay: 'First day',
  lastDay: 'Last day',
  lastDayHint: 'Empty for one day.',
  addDaysOff: 'Add days off',
  takeAway: 'Take away',
  daysOffFull: 'No more fit here. Take old ones away first.',
  badDay: 'This is not a day of the calendar. Write it as 2027-04-30.',
  badRange: 'The last day is before the first.',
  stretchOf: (from: string, to: string) => (from === to ? from : `${from} to ${to}`),

  hourCost: 'What an hour costs',
  hourCostHint:
    'Wages with all that goes on top, or what your own hour is worth to you. Empty: the shop’s rate.',
  shopHourCost: 'What an hour of work costs',
  shopHourCostHint: 'For whoever has no rate of their own. Costs of a piece rest on it.',
  badHourCost: 'A rate is a number such as 24 or 24.50.',

  hoursAWeek: (minutes: number) => `${roundNumber(minutes / 60)} h a week`,
});

export const batchChanceWords = inLanguage('batchChanceWords', {
  chance: 'How sure of enough good ones',
  chanceHint: (usual: number) => `From this follows how many to start. Empty: ${usual} %.`,
  badChance: 'Whole per cent from 50 to 99.',
});
