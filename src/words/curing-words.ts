import { roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';
import { duration } from './time-words.ts';

const minute = 60_000;

/** The words of the board of all that cures. */
export const curingWords = inLanguage('curingWords', {
  short: {
    minutes: (n: number) => `${n} min`,
    hours: (n: number) => `${n} h`,
    days: (n: number) => `${n} d`,
  },
  title: 'What cures',
  lead: 'The soonest ready first.',
  back: 'Bench',
  nothing: 'Nothing cures',
  nothingDetail: 'Load a tray at a stage that holds, and its time stands here.',
  noHolds: 'No stage holds anything',
  noHoldsDetail: 'Glue and finish cure at stages of the kind “cures”. Set-up, Stages, has them.',
  ready: 'ready',
  readySince: (ms: number) => (ms < minute ? 'just now' : `for ${duration(ms)}`),
  mayComeOut: 'may come out',
  readyAt: (time: string) => `ready ${time}`,
  behind: 'after the one before',
  takeOut: (n: number) => `Take ${wholeNumber(n)} out`,
  takeOutOf: (n: number, code: string) => `Take ${wholeNumber(n)} out of ${code}`,
  isEarly: (short: number) => `${duration(short)} too early. The data sheet rules.`,
  places: ({ held, limit, free }: { held: number; limit: number | null; free: number }) =>
    limit === null
      ? `${wholeNumber(held)} held · no limit`
      : `${wholeNumber(held)} of ${wholeNumber(limit)} · ${wholeNumber(free)} free`,
  waiting: (n: number) => `${pieces(n)} to load`,
  load: 'Load',
  mix: 'Mix',
  loadAt: (stage: string) => `Load at ${stage}`,
  mixFor: (stage: string) => `Mix for ${stage}`,
  calendar: 'Calendar',
  calendarAfter:
    'A newer file updates the entries of an older one. What has come out since stays in the calendar: delete it there.',
  undo: 'Undo',
  nothingToUndo: 'nothing yet',

  warmth: (tenths: number | null) => (tenths === null ? 'Warmth' : `${roundNumber(tenths / 10)} °C`),
  warmthDetail: (tenths: number | null) => (tenths === null ? 'not said' : 'in the shop'),
  warmthTitle: 'How warm is it?',
  warmthField: 'Where glue and finish cure',
  warmthHint: 'Empty: not known. The times then stand as the stages have them.',
  badWarmth: 'A temperature such as 18 or 18.5.',
  warmthRule:
    'A rule of thumb: half the time for each 10 °C more, twice the time for each 10 °C less. The adhesive’s data sheet rules.',
  warmthFor: 'It counts for what is loaded from now on. What cures already keeps its time.',
  warmthOf: (stage: string, time: string, least: string) => `${stage}: ${time}, at least ${least}`,
  warmthNotRated: (stage: string, time: string) => `${stage}: ${time}, whatever the warmth`,
});

/** Time left, as short as it can be read across the shop: "3 h 10", "45 min", "2 d 4 h". */
export function shortTime(ms: number): string {
  const whole = Math.max(1, Math.ceil(ms / minute));
  const { minutes, hours, days } = curingWords.short;
  if (whole < 60) return minutes(whole);
  if (whole < 24 * 60) return `${hours(Math.floor(whole / 60))} ${String(whole % 60).padStart(2, '0')}`;
  const all = Math.ceil(whole / 60);
  return all % 24 === 0 ? days(all / 24) : `${days(Math.floor(all / 24))} ${hours(all % 24)}`;
}
