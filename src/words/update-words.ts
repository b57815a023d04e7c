import { inLanguage } from './language.ts';

/** What is said of a new version. Keys of `by` and `where` are those of the app and of its places. */
export const updateWords = inLanguage('updateWords', {
  ready: 'A new version is ready',
  readyLead: 'Nothing is lost: the page opens again with all that is saved.',
  dayLead: 'The day is the time for it. Nothing is lost; the app opens again by itself.',
  apply: 'Use it now',
  tryAgain: 'Try again',
  asking: 'One moment …',
  applying: 'The new version comes in …',
  held: 'Not yet: there is work in the way',
  heldHere: {
    tapping: 'A tray is in mid-work in this window. Leave its stage first.',
    'not-saved': 'A tap in this window is not on disk yet.',
    typing: 'Something is typed in this window and not saved yet: save it, or discard it.',
  },
  heldThere: {
    tapping: (where: string) => `Another window is in mid-work: ${where}.`,
    'not-saved': (where: string) => `Another window has a tap that is not on disk yet: ${where}.`,
    typing: (where: string) => `Another window has something typed and not saved: ${where}.`,
  },
  askedAgain: 'It is asked again every few seconds.',
  noCopy: 'No copy of the records could be made',
  noCopyLead:
    'A copy is made before each new version. Without one this version goes on, and nothing was changed.',
  didNotTake: 'The new version did not come in',
  didNotTakeLead: 'This one goes on, and nothing is lost. Try it again, or restart the browser.',
  arrived: (version: string) => `Now version ${version}.`,
  well: 'All right',
});
