import type { ClockDoubt } from '../domain/log/clock-doubt.ts';
import { momentWords } from './date-words.ts';
import { inLanguage } from './language.ts';

const why: Record<ClockDoubt, string> = {
  'before-build': 'that is before this version was made',
  behind: 'that is before the last tap on this tablet',
  jumped: 'it has jumped',
};

export const clockWords = inLanguage('clockWords', {
  title: "The tablet's clock is in doubt",
  says: (doubt: ClockDoubt, { now, zone }: { now: number; zone: string }) =>
    `It says ${momentWords(now, zone)}: ${why[doubt]}. Set the date and time of the tablet.`,
  kept: 'Every tap is kept, in its order. Days with such taps are marked.',
  isRight: 'The clock is right',
  putAway: 'Put away',
  /** Beside a time or a day. */
  inDoubt: 'clock in doubt',
});
