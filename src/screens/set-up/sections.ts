import type { IconName } from '../../ui/icon/icon-paths.ts';
import { holdSetUpWords } from '../../words/hold-set-up-words.ts';
import { labelWords } from '../../words/label-words.ts';
import { manualWayWords } from '../../words/manual-way-words.ts';
import { setUpWords as words } from '../../words/set-up-words.ts';
import { tabletsWords } from '../../words/tablets-words.ts';
import { woodCareWords } from '../../words/wood-care-words.ts';

export const sectionNames = [
  'woods',
  'parts',
  'variants',
  'reasons',
  'people',
  'stages',
  'route',
  'resources',
  'machines',
  'batches',
  'labels',
  'files',
  'tablet',
  'tablets',
  'manual',
  'about',
] as const;
export type SectionName = (typeof sectionNames)[number];

export const sectionIcons: Readonly<Record<SectionName, IconName>> = {
  woods: 'stores',
  parts: 'shelf',
  variants: 'label',
  reasons: 'flaw',
  people: 'person',
  stages: 'bench',
  route: 'plan',
  resources: 'hold',
  machines: 'retry',
  batches: 'trays',
  labels: 'recount',
  files: 'export',
  tablet: 'set-up',
  tablets: 'join',
  manual: 'book',
  about: 'info',
};

export const sectionTitles: Readonly<Record<SectionName, string>> = {
  woods: words.woods,
  parts: words.parts,
  variants: words.variants,
  reasons: words.reasons,
  people: words.people,
  stages: words.stages,
  route: words.route,
  resources: holdSetUpWords.resources,
  machines: woodCareWords.machines,
  batches: words.batches,
  labels: labelWords.sizes,
  files: words.files,
  tablet: words.tablet,
  tablets: tabletsWords.title,
  manual: manualWayWords.title,
  about: words.about,
};
