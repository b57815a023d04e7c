import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';

export const flowWords = inLanguage('flowWords', {
  cumulative: 'Flow over the days',
  cumulativeLead: 'What stood at each stage at the end of each day, above what was finished.',
  cumulativeMeans:
    'A band is as high as what stood there. Bands of one height: what comes in goes out. A band that grows to the right: pieces pile up before that stage. The way to the right from where the top of all reaches a count to where the finished ones reach it is about the time that a piece takes. Pieces count from the end of their first stage on; routes are taken as they are now.',
  cumulativePicture:
    'A band is as high as what stood at that stage at the end of the day. Pieces count from the end of their first stage on.',
  burnUp: 'Finished against wanted',
  burnUpLead: 'Pieces that have come to the end of their route, day by day.',
  burnUpMeans:
    'The steps rise to what is wanted, or not: a gap that closes more slowly than the days to the date run out is too wide. How likely it is to close stands under Plan, Forecast.',
  day: 'Day',
  pieces: 'Pieces',
  finished: 'Finished',
  firsts: 'As firsts',
  scrapped: 'Scrapped',
  wanted: 'Wanted',
  due: 'due',
  count: wholeNumber,
  ofAllBatches: 'Choose a batch above to see how many are wanted and when.',
  ofEverybody: 'Pieces of all hands are counted here, whoever is chosen above.',
  none: 'Nothing was judged on these days.',
});
