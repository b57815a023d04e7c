import { inLanguage } from './language.ts';

/** Digits in groups of four, as they are read and written down. */
const inFours = (digits: string) => digits.replace(/(.{4})(?=.)/g, '$1 ');

export const lockWords = inLanguage('lockWords', {
  // In the place of what is locked.
  title: 'Locked',
  lead: 'Bench is open to everyone. The rest of the shop opens with the PIN.',
  pinIn: (seconds: number) => (seconds > 0 ? `PIN, in ${seconds} s` : 'PIN'),
  open: 'Open',
  erase: 'Erase',
  checking: 'Checking …',
  wrong: 'Wrong PIN.',
  wrongWait: (seconds: number) => `Wrong PIN. Wait ${seconds} s.`,
  left: (seconds: number) => `${seconds} s`,
  forgotten: 'PIN forgotten? Type the recovery number of 12 digits. It takes the lock away as well.',
  cannot: 'The PIN cannot be checked here. Open Tallywright by https or on the tablet itself.',

  // Set-up.
  panel: 'Bench lock',
  panelLead: 'Keeps visitors to tapping: while locked, only Bench opens without the PIN.',
  isNot:
    'It is no protection against someone who knows browsers: records lie open on the tablet, the rescue page still saves them to a file, and clearing the browser’s data clears the lock. Undo at the bench reaches taps from before the lock as well. Against theft, use the tablet’s own lock.',
  kept: 'The PIN is kept on this tablet alone, hashed, and is in no copy.',
  forgets: 'This browser keeps no settings: the lock is gone when the window is closed or loaded anew.',
  newPin: 'New PIN',
  newPinHint: '4 to 8 digits.',
  again: 'The same once more',
  shape: 'A PIN has 4 to 8 digits.',
  differs: 'The two differ.',
  set: 'Set the PIN',
  recoveryTitle: 'Write this number down',
  recoveryLead:
    'It opens the lock when the PIN is forgotten, and takes it away. It is shown now and never again.',
  recovery: inFours,
  written: 'I have written it down',
  lockNow: 'Lock now',
  lockNowDetail: 'Opens with the PIN',
  byItself: 'Lock by itself without a touch for',
  never: 'Off',
  minutes: (n: number) => `${n} min`,
  change: 'Change the PIN',
  changeNow: 'Change',
  takeAway: 'Take the lock away',
  takeAwayNow: 'Take away',
  currentPin: 'PIN as it is now',
  currentHint: 'Or the recovery number.',
});
