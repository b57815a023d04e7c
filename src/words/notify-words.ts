import { inLanguage } from './language.ts';

/** Words of the notices that the system shows. */
export const notifyWords = inLanguage('notifyWords', {
  title: 'Notices of the system',
  lead: 'When a cure or a pot life is over while the app is behind another, the tablet can say so.',
  ask: 'Notices',
  hint: 'Only while the app is open somewhere. For the night, take the calendar file on the board of what cures.',
  none: 'Stays off: this browser has no notices.',
  refused: 'Stays off: the browser was told not to allow them. Its settings for this page can change that.',
  later: 'Stays off until the browser is allowed to.',
});
