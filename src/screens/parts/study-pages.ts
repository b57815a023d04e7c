import type { IconName } from '../../ui/icon/icon-paths.ts';

/** What the whole log is asked for, a page each; an address has its name. */
export const studyPages = ['chances', 'flow', 'flaws', 'signals', 'time', 'compare'] as const;
export type StudyPage = (typeof studyPages)[number];

export const studyIcons: Readonly<Record<StudyPage, IconName>> = {
  chances: 'yield',
  flow: 'next',
  flaws: 'flaw',
  signals: 'warn',
  time: 'hold',
  compare: 'split',
};

/** The page of an address, if it has one. */
export function studyPageOf(name: string | undefined): StudyPage | undefined {
  return studyPages.find((each) => each === name);
}
