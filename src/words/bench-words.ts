import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

/** The words of the choice of a stage, and of wiping. */
export const benchWords = inLanguage('benchWords', {
  chooseStage: 'Bench',
  chooseStageLead: 'Choose the stage you work at.',
  noStages: 'No route yet',
  noStagesDetail: 'A batch needs a route of stages before pieces can be tapped.',
  toSetUp: 'Open Set-up',
  noTrays: 'No trays yet',
  noTraysDetail: 'Make up the first tray, and its pieces wait at the first stage.',
  toTrays: 'Make up trays',
  waiting: (n: number) => `${wholeNumber(n)} waiting`,
  curing: (n: number) => `${wholeNumber(n)} cure`,
  ready: (n: number) => `${wholeNumber(n)} ready`,
  nothing: 'nothing here',
  curingBoard: 'Curing',
  wipe: 'Wipe screen',
  wipeTitle: 'Wipe the screen',
  wipeLeft: (seconds: number) => `Deaf for ${seconds} s`,
});
