import { inLanguage } from './language.ts';

export const historyWords = inLanguage('historyWords', {
  title: 'What happened to it',
  takeBack: 'Take back',
  putBack: 'Put back',
  takenBack: 'taken back',
  station: (letter: string) => `tablet ${letter}`,
});
