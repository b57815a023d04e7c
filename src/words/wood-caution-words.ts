import type { TrayCautions } from '../domain/wood/tray-cautions.ts';
import { inLanguage } from './language.ts';
import { cautionRules } from './wood-care-words.ts';

/** What is noted of a wood, as the reference data has it. */
export interface NotedHazard {
  readonly effects: readonly string[];
  readonly sites: readonly string[];
  /** Parts of the tree that it was noted of. */
  readonly from: readonly string[];
  /** Strength of the reaction, 1 to 4; null where the chart has none. */
  readonly strength: number | null;
  readonly source: string;
}

export const effectWords = inLanguage<Readonly<Record<string, string>>>('effectWords', {
  sensitiser: 'can make you allergic',
  irritant: 'irritates',
  'pneumonitis/alveolitis (hypersensitivity pneumonia)': 'can inflame the lungs',
  'nasopharyngeal cancer': 'is linked with cancer of the nose and throat',
  'nausea, malaise': 'can make you feel sick',
  'nausea, malaise (listed under site)': 'can make you feel sick',
  'direct toxin': 'is poisonous',
});

export const siteWords = inLanguage<Readonly<Record<string, string>>>('siteWords', {
  skin: 'skin',
  eyes: 'eyes',
  respiratory: 'breathing',
  cardiac: 'heart',
  nausea: 'stomach',
});

export const cautionWords = inLanguage('cautionWords', {
  rule: 'Extraction and mask on. The safety data sheet, your local codes and licensed advice rule over this note.',
  usual: 'Every wood dust can harm lungs, nose and skin.',
  and: 'and',
  wood: 'It',
  partOfTree: (parts: string) => `Its ${parts}, not the wood,`,
  parts: { bark: 'bark', leaves: 'leaves' } as Readonly<Record<string, string>>,
  strength: (n: number) => `strength ${n} of 4`,
  carcinogens: {
    A1: 'Its dust is a confirmed cause of cancer in people (ACGIH A1).',
    A2: 'Its dust is a suspected cause of cancer in people (ACGIH A2).',
    sensitiser: 'ACGIH notes its dust as a cause of allergy.',
  },
  reacted: (wood: string, note: string) => `You reacted to ${wood}: ${note}`,
  flat: 'Never spin a piece with a flat cut: it catches and breaks.',
  fumes: 'Fumes: air the room. Oily rags can catch fire: flat, or under water.',
});

/** The caution of a wood nothing is noted of, and of a wood of the maker's own. */
export const usualCaution = `${cautionWords.usual} ${cautionWords.rule}`;

/** The caution that a wood of the reference data begins with: what is noted, who says so, and what rules. */
export function woodCaution({
  hazard,
  carcinogen,
}: {
  readonly hazard: NotedHazard | null;
  /** The notation of ACGIH for its dust, beginning with its class. */
  readonly carcinogen: string;
}): string {
  const noted = hazard ? hazardWords(hazard) : '';
  const cancer = carcinogenWords(carcinogen);
  return noted || cancer ? [noted, cancer, cautionWords.rule].filter(Boolean).join(' ') : usualCaution;
}

function hazardWords({ effects, sites, from, strength, source }: NotedHazard): string {
  const does = listOf(effects.map((effect) => effectWords[effect] ?? effect));
  const where = sites.map((site) => siteWords[site] ?? site).join(', ');
  const ofWood = from.some((part) => part === 'wood' || part === 'dust');
  const what = ofWood
    ? cautionWords.wood
    : cautionWords.partOfTree(listOf(from.map((part) => cautionWords.parts[part] ?? part)));
  const how = strength === null ? '' : `, ${cautionWords.strength(strength)}`;
  return `${what} ${does} (${where}${how}; ${sourceOf(source)}).`;
}

function carcinogenWords(notation: string): string {
  const { A1, A2, sensitiser } = cautionWords.carcinogens;
  if (notation.startsWith('A1')) return A1;
  if (notation.startsWith('A2')) return A2;
  if (notation.includes('sensitiser')) return sensitiser;
  return '';
}

/** A source as far as one needs it to find it: the rest stands in the reference data. */
function sourceOf(source: string): string {
  return source.split(', as ')[0] ?? source;
}

function listOf(words: readonly string[]): string {
  const once = [...new Set(words)];
  const last = once.at(-1) ?? '';
  return once.length > 1 ? `${once.slice(0, -1).join(', ')} ${cautionWords.and} ${last}` : last;
}

/**
 * The line that stands once at the bench before the first tap of a spell, the gravest first; empty where there is nothing to
 * say that the stage's own caution does not. It ends with what rules, unless the wood's caution says so already.
 */
export function cautionLine({ wood, reaction, flat, fumes }: TrayCautions, name: string): string {
  const ofWood = wood && wood.caution !== usualCaution ? wood.caution : '';
  const noted = [
    ...(reaction ? [cautionWords.reacted(name, sentence(reaction.note))] : []),
    ...(flat ? [cautionWords.flat] : []),
    ...(ofWood ? [sentence(ofWood.startsWith(`${cautionWords.wood} `) ? `${name}: ${ofWood}` : ofWood)] : []),
    ...(fumes ? [cautionWords.fumes] : []),
  ];
  if (noted.length === 0) return '';
  return ofWood ? noted.join(' ') : [...noted, cautionRules.first].join(' ');
}

/** With a full stop, so that the next one does not run into it. */
function sentence(text: string): string {
  return /[.!?]$/.test(text) ? text : `${text}.`;
}
