import { inLanguage } from './language.ts';

/** The words of the choice of a tray at a stage, and of who taps. */
export const trayChoiceWords = inLanguage('trayChoiceWords', {
  nothingWaits: 'Nothing waits here',
  nothingWaitsDetail: 'Trays come here when their pieces pass the stage before.',
  otherStages: 'Other stages',
  scan: 'Scan',
  caution: 'Caution',
  traysWaiting: (stage: string) => `Trays at ${stage}`,
  oldestFirst: 'The one that waits longest comes first.',
  since: (time: string) => `here for ${time}`,
  toCheck: (n: number) => `${n} in the log: recount`.replace('-', '−'),
  whoTaps: 'Who taps?',
  nobody: 'Not said',
});
