import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

export const yieldWords = inLanguage('yieldWords', {
  title: 'Yield',
  lead: 'Where every piece is, and what comes out of each wood.',
  flow: 'Where everything is',
  flowLead: 'Along the route, stage by stage. Tap a wood to see its trays.',
  flowMeans:
    'Each number is the pieces that wait or cure at that stage now; they pile up before what is slowest.',
  asTable: 'The same as a table',
  nothing: 'nothing here',
  curing: (n: number) => `${wholeNumber(n)} cure`,
  stranded: 'not on a route any more',
  strandedTitle: 'Some pieces stand at a stage that no route has',
  strandedHelp: 'Put the stage back on the route, or move the pieces.',
  toRoute: 'Open the route',
  partName: (count: number, wood: string, stage: string) => `${count} of ${wood} at ${stage}`,
  traysHere: (wood: string, stage: string) => `${wood} at ${stage}`,
  traysClose: 'Close',
  noTraysHere: 'No tray of this wood is here now.',
  empty: 'Nothing made yet',
  emptyHelp: 'Yield fills by itself as pieces are tapped off.',
  toTrays: 'Make up trays',
  stage: 'Stage',
  wood: 'Wood',
  total: 'All',
  woods: 'What comes out of each wood',
  woodsMeans:
    'What has become of all pieces of a wood so far: what is still in work may yet be lost, and Chances tells how many of them will likely come out.',
  made: 'Made',
  corrected: 'Recounts',
  inFlight: 'In work',
  firsts: 'Firsts',
  seconds: 'Seconds',
  scrapped: 'Scrapped',
  rolled: 'Through without a flaw',
  addsUp: (made: number, corrected: number) =>
    corrected === 0
      ? `${wholeNumber(made)} made = in work + firsts + seconds + scrapped`
      : `${wholeNumber(made)} made ${corrected > 0 ? '+' : '−'} ${wholeNumber(Math.abs(corrected))} by recounts = in work + firsts + seconds + scrapped`,
  rolledMeans:
    'The chance that a piece goes through all the stages judged so far without a flaw: their first-pass yields multiplied.',
  rolledOf: (factors: string) => `= ${factors}`,
  stagesOf: (wood: string) => `${wood}: good at the first visit, worst stage first`,
  firstPass: 'First-pass yield',
  firstPassMeans:
    'Of the pieces whose first visit to the stage has ended, those that left it good. A piece that comes again counts once only.',
  outOf: (out: number, of: number) => `${wholeNumber(out)} of ${wholeNumber(of)}`,
  repeats: (n: number) => (n === 1 ? '1 came again' : `${wholeNumber(n)} came again`),
  notYet: 'not yet known',
  flaws: 'Flaws by reason',
  flawsLead: 'Pieces with each reason. A piece with two reasons stands under both.',
  flawsMeans:
    'These are counts and no shares: a wood of which much is made has more of everything. The page Flaws has the shares.',
  noFlaws: 'No flaw has been tapped.',
  reason: 'Reason',
  flawsBehind: (reason: string) => `${reason}: where and what became of it`,
  outcome: 'Outcome',
  pieces: 'Pieces',
});
