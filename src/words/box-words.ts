import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { pieces } from './pieces-words.ts';

/** The sheet that goes into the box, or to the customer, with a piece. */
export const boxWords = inLanguage('boxWords', {
  title: 'Sheets for the box',
  short: 'For the box',
  whatBoxes: 'what the customer should know',
  ofTray: (code: string) => `Sheet for pieces of tray ${code}`,
  wood: (name: string) => `Wood: ${name}`,
  finish: (text: string) => `Finish: ${text}`,
  care: (text: string) => `Care: ${text}`,
  caution: (text: string) => `Caution: ${text}`,
  /** The tray first: where the line is too long, the name of the batch is cut. */
  foot: (code: string, batch: string) => `${code} · ${batch}`,

  howMany: 'How many of each',
  eachPiece: 'One a piece',
  eachPieceDetail: 'as many as lie on the tray',
  eachTray: 'One a tray',
  eachTrayDetail: 'for a box of all its pieces',
  tooSmall: 'Too small a label',
  tooSmallHelp: (codes: string) =>
    `The texts of ${codes} do not fit whole, and a caution is never cut. Choose a larger label, or shorten the texts.`,
  notCured: (count: number, codes: string) =>
    `${pieces(count)} of ${codes} ${count === 1 ? 'is' : 'are'} not finished: glue or finish may not have cured. Pack what has passed its last stage.`,
  noSheet: (codes: string) => `No sheet for ${codes}: its variant says so in Set-up, Variants.`,
  nothing:
    'These sheets say no more than wood, batch and tray: write finish, care and caution in Set-up, Labels.',
  toTexts: 'Write the texts',
  most: (n: number) => `At most ${wholeNumber(n)} at once`,

  setUpTitle: 'Sheet for the box',
  setUpLead:
    'What goes with every piece, on a label of its own: the variant, its wood, these texts, the caution of the wood, tray and batch. A variant may say something else, or have none.',
  variantLead: 'What the shop says on every sheet stands in Set-up, Labels. An empty text is the shop’s.',
  printed: 'Sheet for the box',
  isPrinted: 'It has one',
  isNotPrinted: 'It has none',
  finishLabel: 'Finish',
  finishHint: 'Such as: shellac under hard wax, cured.',
  careLabel: 'Care',
  careHint: 'Such as: keep it dry; a little wax once a year.',
  cautionLabel: 'Caution',
  cautionHint:
    'Such as: wear a mask when you sand it anew. Say only what the data sheets of your finish and glue bear out, and what your local rules ask.',
  empty: 'may stay empty',
  ofShop: (text: string) => (text === '' ? 'The shop says nothing.' : `The shop says: ${text}`),
});
