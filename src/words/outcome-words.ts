import type { OutcomeKind, RecountReason } from '../domain/log/event.ts';
import type { Grade } from '../domain/log/place.ts';
import type { StageKind } from '../domain/set-up/facts.ts';

export const outcomeWords: Record<OutcomeKind, string> = {
  mended: 'Mended here',
  'sent-back': 'Sent back',
  second: 'Second',
  scrapped: 'Scrapped',
};

export const gradesWords: Record<Grade, string> = { first: 'firsts', second: 'seconds' };

/** "7 firsts", "1 second-grade": a lone second would be read as time. */
export function ofGrade(count: number, grade: Grade): string {
  const shown = String(count).replace('-', '−');
  return Math.abs(count) === 1 ? `${shown} ${grade}-grade` : `${shown} ${gradesWords[grade]}`;
}

export const recountWords: Record<RecountReason, string> = {
  miscounted: 'Miscounted',
  found: 'Found',
  lost: 'Lost',
  'two-tablets': 'Two tapped the same',
};

export const stageKindWords: Record<StageKind, string> = {
  bench: 'Bench work',
  hold: 'Glue or finish cures',
  check: 'Check and grade',
  record: 'Photograph or list',
};
