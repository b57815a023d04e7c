import { inLanguage } from './language.ts';

export const forgetsWords = inLanguage('forgetsWords', {
  title: 'This window forgets',
  all: 'The browser keeps no records here: everything is gone when this window is closed. Open Tallywright in an ordinary window, or save a file before you close it.',
  perhaps:
    'The browser refuses to keep even settings, as a private window does: what you tap may be gone when it is closed. Use an ordinary window for a shop of your own.',
});
