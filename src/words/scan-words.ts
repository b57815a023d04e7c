import type { BulkMove } from '../domain/command/bulk-move.ts';
import type { Labelled } from '../domain/label/find-labelled.ts';
import { inLanguage } from './language.ts';
import { pieces } from './pieces-words.ts';
import { duration } from './time-words.ts';

/** The words of the screen that reads labels, and of what was read anywhere in the app. */
export const scanWords = inLanguage('scanWords', {
  title: 'Scan a label',
  back: 'Back',
  whatFor: 'What is scanned for?',
  open: 'Open its tray',
  openDetail: 'one label',
  many: 'several in a row',
  moves: {
    'into-clamps': 'Into the clamps',
    'out-of-clamps': 'Out of the clamps',
    'to-shelf': 'To the shelf',
  } satisfies Record<BulkMove, string>,
  picture: 'What the camera sees',
  starting: 'The camera is starting.',
  holdUp: 'Hold a label before the camera.',
  resting: 'The camera is off while the app is not in view.',
  light: 'Light',
  tryAgain: 'Try again',
  close: 'Close',
  several: 'More than one label is in the picture. Show one.',
  already: (code: string) => `${code} is in the list already.`,
  added: (code: string) => `${code} is in the list.`,

  list: 'Trays in the list',
  listEmpty: 'No label was read yet.',
  listEmptyHelp: 'Read one after the other. Nothing is done before you tap the button.',
  doAll: (n: number) => (n < 2 ? 'Do it' : `Do all ${n}`),
  leaveOut: 'Leave out',
  leaveOutOf: (code: string) => `Leave out ${code}`,
  undo: 'Undo',
  undoOf: (code: string) => `Undo ${code}`,
  newList: 'New list',
  nothingToDo: 'nothing to do',
  load: (n: number, stage: string) => `${pieces(n)} into ${stage}`,
  unload: (n: number, stage: string, next: string) => `${pieces(n)} out of ${stage}, to ${next}`,
  pass: (n: number, stage: string, next: string) => `${pieces(n)} from ${stage} to ${next}`,
  finished: 'the shelf',
  done: 'Done',
  takenBack: 'Taken back',
  stillCures: (ready: string) => `Still cures: ${ready}.`,
  staysIn: (n: number, short: number) => `${pieces(n)} must cure ${duration(short)} more.`,
  isEarly: (n: number, short: number) =>
    `${pieces(n)} up to ${duration(short)} too early. The data sheet rules.`,
  takeEarlyOf: (code: string) => `Take out early: ${code}`,
  letCureOf: (code: string) => `Let it cure: ${code}`,
  nothingFor: {
    'into-clamps': 'No piece of it waits for the clamps.',
    'out-of-clamps': 'No piece of it is in the clamps.',
    'to-shelf': 'No piece of it waits at the last stage.',
  } satisfies Record<BulkMove, string>,

  sheetOpen: 'A label was read. Close what is open, then read it again.',
});

/** Why there is no picture, and what to do: the pad on the same screen always works. */
export const cameraTroubleWords = inLanguage('cameraTroubleWords', {
  insecure: {
    title: 'No camera without HTTPS',
    help: 'The browser gives the camera only to pages that come by HTTPS. Type the code below.',
  },
  unsupported: {
    title: 'This browser has no camera for pages',
    help: 'Type the code below, or use a code reader that types like a keyboard.',
  },
  denied: {
    title: 'The camera is not allowed',
    help: 'Allow it for this page in the settings of the browser, then try again. The code can be typed below.',
  },
  none: {
    title: 'No camera was found',
    help: 'Connect one and try again, or type the code below.',
  },
  taken: {
    title: 'The camera is in use',
    help: 'Another app or window has it. Close that one and try again, or type the code below.',
  },
  gone: {
    title: 'The camera is gone',
    help: 'It was unplugged or switched off. Connect it and try again, or type the code below.',
  },
  unreadable: {
    title: 'The picture cannot be read',
    help: 'The part that reads labels could not be started. Try again, or type the code below.',
  },
  unknown: {
    title: 'The camera does not start',
    help: 'Try again, or type the code below.',
  },
});

export const labelledSentences = inLanguage('labelledSentences', {
  of: (labelled: Exclude<Labelled, { kind: 'tray' | 'alike' }>): string => {
    switch (labelled.kind) {
      case 'not-here':
        return `${labelled.code} is a label of this shop, but its tray is not in the log.`;
      case 'other-shop':
        return `${labelled.code} is a label of another shop.`;
      case 'damaged':
        return 'This label is damaged: its code does not add up. Type the code, or print the label anew.';
      case 'foreign':
        return 'This is no label of a tray.';
    }
  },
});

/** What to say of a label that leads to no tray here. */
export const labelledWords = (labelled: Exclude<Labelled, { kind: 'tray' | 'alike' }>): string =>
  labelledSentences.of(labelled);
