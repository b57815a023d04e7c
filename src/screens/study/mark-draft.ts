import type { SpeciesId, StageId } from '../../domain/log/ids.ts';
import { momentAt, wallClockAt } from '../../domain/log/zone.ts';
import type { MarkFact } from '../../domain/set-up/facts.ts';
import { problemOfMarkNote, tidyText } from '../../domain/set-up/text.ts';
import { problemWords } from '../../words/problem-words.ts';
import { signalsWords as words } from '../../words/signals-words.ts';
import { type Reading, readingOf } from '../parts/form/reading.ts';

/** A mark as it is typed: the day and the time of the shop's own clock. */
export interface MarkDraft {
  readonly note: string;
  readonly stage: StageId | undefined;
  readonly species: SpeciesId | null;
  readonly day: string;
  readonly time: string;
}

/** What a new mark begins with: the stage, the wood and the signal that it is set for. */
export interface MarkStart {
  readonly stage: StageId | undefined;
  readonly species: SpeciesId | null;
  readonly answers: MarkFact['answers'];
}

interface Now {
  /** ms UTC */
  readonly at: number;
  readonly zone: string;
}

export function markDraftOf(mark: MarkFact | MarkStart, { at, zone }: Now): MarkDraft {
  const known = 'note' in mark ? mark : { note: '', at };
  return {
    note: known.note,
    stage: mark.stage,
    species: mark.species,
    ...wallClockAt(known.at, zone),
  };
}

/** The mark that is typed; nothing can be marked that is still to come. */
export function readMark(
  draft: MarkDraft,
  { at, zone }: Now,
): Reading<Pick<MarkFact, 'note' | 'stage' | 'species' | 'at'>, MarkDraft> {
  const { stage, species } = draft;
  const moment = momentAt(draft, zone);
  const problems = {
    note: noteProblem(draft.note),
    stage: stage ? undefined : problemWords({ kind: 'no-stage' }, new Map()),
    day: moment === null ? words.whenWrong : moment > at ? words.whenLater : undefined,
  };
  if (!stage || moment === null) return { ok: false, problems };
  return readingOf(problems, () => ({ note: tidyText(draft.note), stage, species, at: moment }));
}

function noteProblem(typed: string): string | undefined {
  const problem = problemOfMarkNote(typed);
  if (!problem) return undefined;
  return problemWords(problem.kind === 'empty' ? { kind: 'no-note' } : { kind: 'text', problem }, new Map());
}
