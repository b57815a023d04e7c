import { inLanguage } from './language.ts';
import { wholeNumber } from './number-words.ts';
import { cautionRules } from './wood-care-words.ts';

export const dustWords = inLanguage('dustWords', {
  title: 'Minutes in wood dust',
  leadAll: 'Work at stages that make dust, by wood. Everyone’s taps.',
  leadOne: (name: string) => `Work at stages that make dust, by wood. Taps of ${name}.`,
  wood: 'Wood',
  day: 'This day',
  usual: 'Your usual',
  usualOver: 'Days',
  all: 'All woods',
  minutes: (value: number) => wholeNumber(Math.round(value)),
  noUsual: '–',
  none: 'No dust was made on this day.',
  reading: 'Adding up …',
  failed: 'The log could not be read for this. Nothing is lost; look again later.',
  notSaid: 'No stage says yet that it makes dust. Say it in Set-up, Stages.',
  toStages: 'Set-up, Stages',
  means:
    'Your usual is the middle one of your own earlier days on which that wood made dust: half were longer, half shorter.',
  noDosimeter:
    'This is no dosimeter. It counts minutes between taps; it knows nothing of how much dust there was, of extraction or of masks. Few minutes are no proof of safety.',
  limits: 'Published workplace limits, for information',
  limitsLead:
    'Milligrams of dust in a cubic metre of air, mean of an 8-hour shift. A log cannot measure them.',
  limit: 'Who and what',
  value: 'mg/m³',
  source: 'Source',
  rules: `${cautionRules.first} Measure, or have it measured, before you trust your air.`,
});

/** A published limit for the air of a workplace. */
export interface DustLimit {
  readonly name: string;
  /** mg/m³, mean over 8 hours. */
  readonly value: number;
  readonly source: string;
}

/** Limits as published by the years given; held to shared/check-values/wood.json by a test. */
export const dustLimits = inLanguage('dustLimits', {
  NIOSH_REL: { name: 'USA, NIOSH: recommended, all wood dust', value: 1, source: 'OSHA wood dust page' },
  ACGIH_TLV_inhalable: {
    name: 'USA, ACGIH: threshold, inhalable',
    value: 1,
    source: 'ACGIH, quoted on the OSHA wood dust page',
  },
  ACGIH_western_red_cedar: {
    name: 'USA, ACGIH: western red cedar',
    value: 0.5,
    source: 'ACGIH, quoted on the OSHA wood dust page',
  },
  OSHA_PEL_total_dust: {
    name: 'USA, OSHA: legal, as nuisance dust, total',
    value: 15,
    source: 'OSHA wood dust page',
  },
  OSHA_PEL_respirable: {
    name: 'USA, OSHA: legal, as nuisance dust, respirable',
    value: 5,
    source: 'OSHA wood dust page',
  },
  EU_hardwood_since: {
    name: 'EU: hardwood, inhalable, since January 2023',
    value: 2,
    source: 'Directive (EU) 2017/2398',
  },
  UK_hardwood: { name: 'UK: hardwood', value: 3, source: 'HSE EH40/2005, 4th edition (2020)' },
  UK_softwood: { name: 'UK: softwood', value: 5, source: 'HSE EH40/2005, 4th edition (2020)' },
} satisfies Readonly<Record<string, DustLimit>>);
