import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

/** How many of a delivery to check. */
export const samplingWords = inLanguage('samplingWords', {
  title: 'How many to check',
  lead: 'For small parts that are too many to look at one by one. Take them from all over the delivery, not from the top.',
  limit: 'How many bad ones are bearable, on average of many deliveries?',
  limitOf: (percent: string) => `${percent} in 100`,
  enterCount: 'Enter how many came.',
  check: (sample: number, of: number) => `Check ${wholeNumber(sample)} of these ${wholeNumber(of)}`,
  accept: (accept: number) =>
    accept === 0
      ? 'Accept the delivery if none of them is bad. With a single bad one send it back, or check every one.'
      : `Accept the delivery with at most ${pieces(accept)} bad. With ${wholeNumber(accept + 1)} or more send it back, or check every one.`,
  all: (of: number) => `Check all ${wholeNumber(of)}`,
  allHelp: 'So few came that a sample would be no smaller.',
  chances: 'What the sample lets through',
  chanceOf: (badIn100: string, times: number) =>
    `Of deliveries with ${badIn100} bad in 100, ${timesIn100(times)} are accepted.`,
  keepLater: 'What the sample came to is kept under Check a delivery, on the page of the part.',
  checkIt: 'Check a delivery',
  sampleTitle: (part: string) => `Check a delivery of ${part}`,
  badAmong: (checked: number | undefined) =>
    checked === undefined ? 'How many bad ones?' : `How many bad ones among ${wholeNumber(checked)}?`,
  keep: 'Keep it',
  refusedTitle: 'This delivery is refused',
  refusedLead:
    'No count has changed. Send it back, or check every piece; what does not stay here is counted out by you.',
  refusedAll: 'No count has changed. The good ones can be used; the bad ones are counted out by you.',
  countOut: (lot: number) => `Count out all ${wholeNumber(lot)}`,
  countBadOut: (bad: number) => `Count out ${bad === 1 ? 'the bad one' : `the ${wholeNumber(bad)} bad ones`}`,
  countOutDetail: 'Shows first what would be left',
  leaveCounts: 'Leave the counts',
  never: 'Where hands or eyes depend on a part, check every one: a sample lets bad ones through.',
  source:
    'Single sampling, normal inspection, level II of MIL-STD-105E (1989, public), to which ISO 2859-1 goes back. Chances are of a long run of deliveries.',
});

/** "96 in 100"; what is nearly all or nearly none is said so. */
function timesIn100(share: number): string {
  const times = Math.round(share * 100);
  if (times >= 100) return 'nearly all';
  return times <= 0 ? 'nearly none' : `${times} in 100`;
}
