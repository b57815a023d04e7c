import { roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { cautionRules } from './wood-care-words.ts';

/** To the nearest fifty: no dial of a lathe is read closer. */
const turns = (value: number) => wholeNumber(Math.max(50, Math.round(value / 50) * 50));

export const speedWords = inLanguage('speedWords', {
  title: 'Lathe speed',
  lead: 'For a sound, round, centred piece of wood.',
  open: 'Speed',
  diameter: 'Diameter',
  length: 'Length',
  machine: 'Machine',
  noMachine: 'Not said',
  badDiameter: 'A diameter is a number of mm between 3 and 1,000.',
  badLength: 'A length is a number of mm up to 5,000.',
  range: (low: number, high: number) =>
    turns(low) === turns(high)
      ? `${turns(low)} turns a minute`
      : `${turns(low)} to ${turns(high)} turns a minute`,
  surface: (low: number, high: number) => {
    const [from, to] = [roundNumber(low), roundNumber(high)];
    return `${from === to ? from : `${from} to ${to}`} metres a second at the surface.`;
  },
  atMost: (value: number) => `At most ${turns(value)} turns a minute`,
  limited: 'This is the limit that you noted of the machine; by its diameter the piece would bear more.',
  slowly: 'Begin below that, and come up only as far as the piece runs quietly.',
  steady: 'More than ten times as long as thick: support it with a steady rest, and stay slow.',
  begin: 'Begin at the slowest speed of the machine with what is rough, cracked, glued up or out of balance.',
  never: 'Never spin a piece with a flat cut, a loose ferrule or a crack. Stand aside when you start.',
  source:
    'Common practice of woodturners, no standard: inches of diameter times turns a minute lie between 6,000 and 9,000.',
  rules: `The limits of machine, chuck and tool come first. ${cautionRules.first}`,
});
