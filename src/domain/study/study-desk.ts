import { entriesIn, type LogToStudy, tapTable } from './log-of-taps.ts';
import { type Study, type StudyQuestions, studyOf, type WholeStudy, wholeStudyOf } from './study.ts';
import type { TapTable } from './tap-table.ts';

/** Questions on a log as of when it had `size` entries. */
export interface StudyOrder {
  readonly questions: StudyQuestions;
  /** Of any meaning, so long as it is another one when the log has grown. */
  readonly size: number;
}

export interface Answered {
  readonly study: Study;
  /** How many entries were read. */
  readonly asOf: number;
}

/**
 * Answers questions on a log, which is read anew only when it has grown: its table is kept between two questions, and what
 * is of the whole shop between two that differ in filters alone.
 */
export function studyDesk(): (order: StudyOrder, read: () => Promise<LogToStudy>) => Promise<Answered> {
  let kept: { readonly size: number; readonly table: TapTable; readonly asOf: number } | undefined;
  let whole: { readonly of: string; readonly study: WholeStudy } | undefined;
  return async ({ questions, size }, read) => {
    if (kept?.size !== size) {
      kept = undefined;
      whole = undefined;
      const log = await read();
      kept = { size, table: tapTable(log), asOf: entriesIn(log) };
    }
    const of = JSON.stringify([questions.answered, questions.level]);
    if (whole?.of !== of) whole = { of, study: wholeStudyOf(kept.table, questions) };
    return { study: studyOf(kept.table, questions, whole.study), asOf: kept.asOf };
  };
}
