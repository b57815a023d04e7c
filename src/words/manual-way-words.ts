import { inLanguage } from './language.ts';

/** The way to the manual and out of it; apart from its chapters, which are fetched when somebody reads them. */
export const manualWayWords = inLanguage('manualWayWords', {
  title: 'How it works',
  back: 'Back',
});
