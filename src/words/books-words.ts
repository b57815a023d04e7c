import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

const counted = (n: number, one: string, many: string) =>
  n === 1 ? `1 ${one}` : `${wholeNumber(n)} ${many}`;

export const booksWords = inLanguage('booksWords', {
  title: 'Check the books',
  lead: 'Adds the whole log up anew and compares it with the figures on the screens, entry by entry.',
  check: 'Check now',
  checking: 'Checking …',
  cannotRead: 'The log could not be read, so nothing was checked and nothing was changed. Try again.',
  inOrder: (entries: number, stations: number) =>
    `All in order: ${counted(entries, 'entry', 'entries')} of ${counted(stations, 'station', 'stations')}, every figure as the log has it.`,
  checked: (entries: number) => `${counted(entries, 'entry was', 'entries were')} checked.`,
  damaged: (n: number) =>
    `${counted(n, 'record is', 'records are')} not as written: set aside, not counted, not deleted. The second copy or a saved file can put ${n === 1 ? 'it' : 'them'} right.`,
  gap: (station: string, from: number, to: number) =>
    from === to
      ? `Entry ${from} of ${station} is missing.`
      : `Entries ${from} to ${to} of ${station} are missing.`,
  broken: (station: string, seq: number) =>
    `Entry ${seq} of ${station} does not follow on from the one before it.`,
  more: (n: number) => `And ${wholeNumber(n)} more.`,
  newer: (n: number) => `${counted(n, 'entry is', 'entries are')} of a newer version: kept, not counted.`,
  differing: 'Some figures on the screens are not what the log amounts to.',
  takeRebuilt: 'Take the log’s figures',
  twin: {
    all: 'The second copy on this tablet holds the same.',
    tail: 'The second copy on this tablet holds the newest entries; this browser keeps no files.',
    none: 'This browser keeps no second copy. Save files often.',
    failed: 'The second copy could not be read or written.',
  },
});
