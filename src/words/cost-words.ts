import type { SecondVerdict } from '../domain/plan/cost/finish-second.ts';
import type { PriceCheck } from '../domain/plan/cost/price-check.ts';
import { money } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

const percent = (value: number) => `${wholeNumber(100 * value).replace('-', '−')} %`;

/** Words of what pieces cost. */
export const costWords = inLanguage('costWords', {
  batch: 'Batch',
  money,
  perGood: 'Cost of one good piece',
  perGoodLead: 'Firsts and seconds that are finished bear all; what is in work, and in it, is left out.',
  perGoodMeans:
    'Parts and consumables by the bill, at what was paid for them or what Set-up says. Labour is one visit to each stage at the minutes that a piece took there, and every visit again of what was sent back, at the rate of the shop. Scrap is the work and the parts that were lost in scrapped pieces. Markdown is what seconds bring in less than firsts.',
  variant: 'Variant',
  parts: 'Parts',
  labour: 'Labour',
  consumables: 'Consumables',
  scrap: 'Scrap absorbed',
  markdown: 'Markdown of seconds',
  whole: 'Cost',
  price: 'Price of a first',
  margin: 'Margin',
  verdict: 'That is',
  notKnown: 'not known',
  atLeast: (minor: number) => `at least ${money(minor)} in all`,
  noneGood: 'none finished yet',
  dash: '–',
  marginIs: percent,
  verdicts: {
    'below-cost': 'below cost',
    'below-margin': 'below the margin',
    enough: 'enough',
  } satisfies Record<PriceCheck['verdict'], string>,
  leastPrice: 'Least price for it',
  prices: 'Prices held against it',
  wantedMargin: 'Margin that you want',
  wantedMarginHint: 'Of the price, not of the cost.',
  badMargin: 'Whole per cent from 0 to 99.',

  missing: 'Not known yet',
  missingLead: 'What follows has to be said before the costs that rest on it are known.',
  missingCosts: (parts: string) => `What one costs: ${parts}.`,
  missingMinutes: (stages: string) =>
    `What a piece takes at ${stages}: tap there piece by piece, and it will be known.`,
  missingRate: 'What an hour of work costs.',
  missingPrices: 'A price of a first or a second.',
  toParts: 'Costs of parts',
  toRate: 'Rate of the shop',
  toVariants: 'Prices of variants',
  rateNote: 'The rate is the shop’s, whoever did the work.',

  losses: 'Money lost',
  lossesLead: (whole: number) => `${money(whole)} in all, by stage and reason, the dearest first.`,
  lossesMeans:
    'A scrapped piece lost its work and its parts so far, less what was saved; one that was sent back, the work that is done again; a second, what it brings in less. A piece with two reasons stands under both, its money halved.',
  noLosses: 'Nothing was lost.',
  unknownLosses: (n: number) => `${pieces(n)} more, of which the money is not known.`,
  stage: 'Stage',
  reason: 'Reason',
  noReason: 'none given',
  pieces: 'Pieces',
  lost: 'Lost',

  second: 'A blemished piece: finish it, or scrap it?',
  secondLead:
    'Against what finishing still costs and what scrapping now would save. What it has cost so far is spent either way.',
  standsAt: 'It stands at',
  saves: 'Scrapping now saves',
  savesHint: 'What the parts are worth that come off it, less the work of saving them.',
  badSaves: 'A sum is a number such as 24 or 24.50.',
  answer: (verdict: SecondVerdict): string => {
    switch (verdict.kind) {
      case 'no-chance':
        return 'It cannot come through any more.';
      case 'not-known':
        return 'Not known: see what has to be said above.';
      case 'known':
        return `${verdict.gain >= 0 ? 'Finish it' : 'Scrap it'}: finishing costs ${money(Math.round(verdict.toCome))} more, it comes through with a chance of ${percent(verdict.chance)}, and is worth it from a price of ${money(verdict.breakEvenPrice)} on.`;
    }
  },
});
