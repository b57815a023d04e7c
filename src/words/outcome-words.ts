import type { OutcomeKind, RecountReason } from '../domain/log/event.ts';
import type { Grade } from '../domain/log/place.ts';
import type { StageKind } from '../domain/set-up/facts.ts';
import { inLanguage } from './language.ts';

export const outcomeWords = inLanguage<Readonly<Record<OutcomeKind, string>>>('outcomeWords', {
  mended: 'Mended here',
  'sent-back': 'Sent back',
  second: 'Second',
  scrapped: 'Scrapped',
});

/** The same within a sentence. */
export const outcomeInSentence = inLanguage<Readonly<Record<OutcomeKind, string>>>('outcomeInSentence', {
  mended: 'mended here',
  'sent-back': 'sent back',
  second: 'second',
  scrapped: 'scrapped',
});

export const gradesWords = inLanguage<Readonly<Record<Grade, string>>>('gradesWords', {
  first: 'firsts',
  second: 'seconds',
});

export const oneOfGrade = inLanguage<Readonly<Record<Grade, (shown: string) => string>>>('oneOfGrade', {
  first: (shown) => `${shown} first-grade`,
  second: (shown) => `${shown} second-grade`,
});

/** "7 firsts", "1 second-grade": a lone second would be read as time. */
export function ofGrade(count: number, grade: Grade): string {
  const shown = String(count).replace('-', '−');
  return Math.abs(count) === 1 ? oneOfGrade[grade](shown) : `${shown} ${gradesWords[grade]}`;
}

export const recountWords = inLanguage<Readonly<Record<RecountReason, string>>>('recountWords', {
  miscounted: 'Miscounted',
  found: 'Found',
  lost: 'Lost',
  'two-tablets': 'Two tapped the same',
});

/** The same within a sentence. */
export const recountInSentence = inLanguage<Readonly<Record<RecountReason, string>>>('recountInSentence', {
  miscounted: 'miscounted',
  found: 'found',
  lost: 'lost',
  'two-tablets': 'two tapped the same',
});

export const stageKindWords = inLanguage<Readonly<Record<StageKind, string>>>('stageKindWords', {
  bench: 'Bench work',
  hold: 'Glue or finish cures',
  check: 'Check and grade',
  record: 'Photograph or list',
});
