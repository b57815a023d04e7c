import { fixedNumber, roundNumber } from './fine-number-words.ts';
import { inLanguage } from './language.ts';

/** One decimal always: 8.0 is not the same reading as 8. */
const tenth = (value: number) => fixedNumber(value, 1);
const mm = (hundredths: number) => `${roundNumber(hundredths / 100)} mm`;
/** Whole hundredths of a millimetre; less than one is said so. */
const hundredthsOf = (value: number) =>
  value < 1 ? 'less than 1/100 mm' : `about ${Math.round(value)}/100 mm`;

/** Words of the page where lots of blanks dry until they are ready to fit. */
export const moistureWords = inLanguage('moistureWords', {
  title: 'Wood and air',
  lead: 'Lots of blanks, how wet they are, and whether a ferrule will stay tight on them.',
  toParts: 'Parts',
  air: 'The air of the room',
  airLead: 'Where the pieces are turned, and where they will be used.',
  celsius: 'Temperature',
  humidity: 'Relative humidity',
  badCelsius: 'A temperature is a number of °C between −1 and 93, with at most one decimal.',
  badHumidity: 'Humidity is a number between 5 and 95, with at most one decimal.',
  comesTo: (percent: number) => `Wood comes to about ${tenth(percent)} % in this air.`,
  airNotSaid: 'Type both to know what wood comes to here.',
  fit: 'Fitted diameter',
  fitLabel: (diameter: number) => mm(diameter),
  noFits: 'No ferrule or core says yet what diameter it is fitted on.',
  toFits: 'Set-up, parts',
  lots: 'Lots of blanks',
  noLots: 'No lot yet. Add the blanks that lie and dry together.',
  reading: 'Meter shows',
  read: 'Note it',
  badReading: 'Moisture is a number of per cent between 0 and 200, with at most one decimal.',
  last: (percent: number, when: string) => `${tenth(percent)} %, ${when}`,
  noReading: 'Not read yet',
  series: (percents: readonly number[]) => `Before: ${percents.map(tenth).join(', ')} %`,
  takeBack: 'Take back',
  addLot: 'Add a lot',
  lotName: 'Name of the lot',
  lotWood: 'Wood',
  noWood: 'Choose the wood.',
  putAway: 'Put away',
  verdicts: {
    'no-reading': 'Read it with a moisture meter.',
    'no-air': 'Say the air of the room to know whether it is ready.',
    'no-diameter': 'Say in Set-up what diameter a ferrule is fitted on to know the gap.',
    'out-of-range': 'This reading cannot be worked with.',
  },
  ready: 'Ready to fit.',
  readyGap: (gap: number, diameter: number) =>
    gap < 1
      ? 'As dry as this room: no gap is to be expected.'
      : `A gap of ${hundredthsOf(gap)} on ${mm(diameter)} is to be expected, which a fit forgives.`,
  tooWet: 'Not ready.',
  tooWetGap: (gap: number, diameter: number) =>
    `Fitted now, a gap of ${hundredthsOf(gap)} on ${mm(diameter)} is to be expected.`,
  tooDry: 'Drier than this room.',
  tooDryGrowth: (growth: number, diameter: number) =>
    `Fitted now, it will grow by ${hundredthsOf(growth)} on ${mm(diameter)}: tight at first, then strained.`,
  notKnown: 'Movement not known.',
  notKnownBy: (above: number) => {
    const way = above >= 0 ? 'wetter' : 'drier';
    return `The table has no shrinkage of this wood. It is ${tenth(Math.abs(above))} % ${way} than this room asks for.`;
  },
  means:
    'Worked out from the Wood Handbook of the USDA Forest Products Laboratory (FPL-GTR-190): moisture from the air by its equation 4-5, movement from its shrinkage along the rings, table 4-3. Real woods and meters lie a per cent or so to either side. Under 5/100 mm counts as ready (common practice, no source).',
});
