import { inLanguage } from './language.ts';

/** Words of what a check accepts and what it does not. */
export const criterionWords = inLanguage('criterionWords', {
  passes: 'What passes',
  passesHint: 'For checks: your own standard, in a few words. It stands on the button of the check.',
  photos: 'What passes, and what does not',
  photosHint: 'Shown at the check, so that everybody judges alike.',
  good: 'Passes',
  bad: 'Does not pass',
});
