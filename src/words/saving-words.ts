import { inLanguage } from './language.ts';

export const savingWords = inLanguage('savingWords', {
  idle: '',
  taken: 'Taken',
  saved: 'Saved',
  'not-saved': 'Not saved',
  undone: 'Taken back',
});
