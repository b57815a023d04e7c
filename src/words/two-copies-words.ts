import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

const counted = (n: number, one: string, many: string) =>
  n === 1 ? `1 ${one}` : `${wholeNumber(n)} ${many}`;

/** What the second copy of the log was needed for, or what it is not there for. */
export const twoCopiesWords = inLanguage('twoCopiesWords', {
  putBackTitle: (taps: number) => `Put back ${counted(taps, 'tap', 'taps')}`,
  putBack: 'The browser had lost them; the second copy on this tablet had them.',
  seen: 'Good',
  missingTitle: (entries: number) => `${counted(entries, 'entry is', 'entries are')} missing`,
  missing:
    'This tablet once held more than it does now, and neither copy on it has the rest. Restore a file that you saved; what is here stays as it is.',
  toFiles: 'Restore a file',
  goOnWithout: 'Go on without',
  suspectTitle: 'This tablet failed to store a tap',
  suspect:
    'Until it has started anew, a tap counts as saved only when the second copy has it too. Make room on the tablet, save a file, then close the browser and open it again.',
  behindTitle: 'The second copy cannot be written',
  behind: 'Taps are saved, but in one place only. It is tried again by itself; save a file to be sure.',
  onlyLookingTitle: 'Only looking: a newer version has been here',
  onlyLooking:
    'This window is of an older version. It shows what it understands and changes nothing. Reload it to get the newer one.',
  reload: 'Reload',
});
