import { inLanguage } from './language.ts';

export const shellWords = inLanguage('shellWords', {
  stationName: (letter: string) => `Tablet ${letter}`,
  places: 'Places',
  bench: 'Bench',
  trays: 'Trays',
  stores: 'Stores',
  yield: 'Yield',
  plan: 'Plan',
  day: 'Day',
  shelf: 'Shelf',
  setUp: 'Set-up',
  locked: 'Locked',
  more: 'More',
  close: 'Close',
  opening: 'Opening the shop …',
  otherWindow: 'Another window still runs the older version. Close it, and this one opens.',
  outdatedTitle: 'Updated in another window',
  outdated: 'A newer version is open in another window. Nothing is lost.',
  reload: 'Reload',
  brokenTitle: 'This screen cannot be shown',
  broken: 'A fault of the app, not of your records: every tap that was saved is kept.',
  rescue: 'Rescue page: save everything to a file',
  stillOpening: 'It takes longer than it should.',
  newerTitle: 'This shop was opened by a newer version',
  newer: 'This window runs an older version, so it leaves the shop untouched. Reload to get the newer one.',
  failedTitle: 'The shop could not be read',
  failed:
    'This is not an empty shop: the log could not be opened, and nothing was written. Try again, or restart the browser.',
  tryAgain: 'Try again',
  updateWaiting: 'A new version is ready.',
});

export const notSavedWords = inLanguage('notSavedWords', {
  word: 'NOT SAVED',
  slow: 'The tablet does not answer. The tap is kept on this screen: do not close it.',
  failed: 'The tablet could not store the tap. It is kept on this screen: do not close it.',
  retry: 'Try again',
  export: 'Save a file',
});
