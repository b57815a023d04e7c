import { inLanguage } from './language.ts';

/** What the app promises for each fault. README.md says the same, row by row, and names the test of each. */
export const promiseRows = inLanguage('promiseRows', [
  {
    fault: 'A tab or window is closed, or the page crashes',
    happens: 'Each tap was on disk before it was answered; the next start shows it.',
    lost: 'Nothing that was answered. A tap still unanswered may be there or not, never twice.',
  },
  {
    fault: 'The browser is killed in the middle of writing',
    happens: 'The store keeps whole taps only; the second copy is compared at the next start.',
    lost: 'Nothing that was answered.',
  },
  {
    fault: 'The power fails',
    happens: 'A tap is answered when the browser has asked the disk to keep it.',
    lost: 'At most taps not yet answered, as far as the disk keeps its word.',
  },
  {
    fault: 'The disk is full, and later has room again',
    happens:
      'NOT SAVED stands on the screen and the tap is kept. After such a failure a tap counts only when both copies have it, until a start has found the store whole.',
    lost: 'Nothing that was answered. Should the browser empty the whole app for room, the newest 300 entries come back from its small storage, the others from a file outside; it is said how many are missing. A browser that has promised to keep the records (asked when a shop is begun) should not do so.',
  },
  {
    fault: 'The browser’s database is wiped or damaged',
    happens: 'The next start puts back from the second copy what is missing, and says how much.',
    lost: 'At most the last second, if the browser was killed in that same second. If both copies are gone, what no file outside has: it says so and never begins empty by itself.',
  },
  {
    fault: 'The tablet’s clock jumps or is wrong',
    happens: 'Order and identity do not come from it. It is said once, and the days are marked.',
    lost: 'Nothing; a tap may be counted on another day.',
  },
  {
    fault: 'An update breaks off half-way, or is taken back',
    happens: 'The version that was there goes on, whole and offline. Nothing is updated in mid-work.',
    lost: 'Nothing.',
  },
  {
    fault: 'Two tabs or windows are open',
    happens: 'Both tap into the same log and show the same counts within a moment.',
    lost: 'Nothing, and nothing counts twice.',
  },
  {
    fault: 'A window is frozen by the system',
    happens: 'It holds nobody up, and reads on when it thaws.',
    lost: 'Nothing.',
  },
  {
    fault: 'A file from someone else, cut, damaged or hostile',
    happens: 'It is read in part or refused with the reason; what is here stays as it is.',
    lost: 'Nothing.',
  },
  {
    fault: 'A copy is restored, or a tablet was cloned',
    happens:
      'Entries are added by their identity, each once. Two tablets under one name are found when their files meet, told apart, and keep the taps of both.',
    lost: 'Nothing.',
  },
  {
    fault: 'The store was opened by a newer version',
    happens: 'The older version shows it and changes nothing.',
    lost: 'Nothing.',
  },
]);

export const promiseWords = inLanguage('promiseWords', {
  title: 'What is promised',
  lead: 'What happens when something goes wrong, and what can be lost.',
  fault: 'When',
  happens: 'What happens',
  lost: 'What is lost',
  not: 'Not promised: a lost or wiped tablet without a file outside, private windows, a disk that stays full, entries typed wrong, a person with the unlocked tablet, photos that were not saved as files. Real power cuts, iPads and Safari were not tried.',
});
