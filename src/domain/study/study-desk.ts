import { type PlanQuestions, type PlanStudy, planOf } from '../plan/plan-study.ts';
import { entriesIn, type LogToStudy, tapTable } from './log-of-taps.ts';
import { type Study, type StudyQuestions, studyOf, type WholeStudy, wholeStudyOf } from './study.ts';
import type { TapTable } from './tap-table.ts';

/** What a log can be asked, by the name of the subject: its questions, and what they are answered with. */
interface Subjects {
  readonly study: { readonly questions: StudyQuestions; readonly answer: Study };
  readonly plan: { readonly questions: PlanQuestions; readonly answer: PlanStudy };
}
export type StudySubject = keyof Subjects;
export type QuestionsOf<Subject extends StudySubject> = Subjects[Subject]['questions'];

/** Questions on a log as of when it had `size` entries. */
export type StudyOrder<Subject extends StudySubject = StudySubject> = {
  readonly [Each in Subject]: {
    readonly subject: Each;
    readonly questions: QuestionsOf<Each>;
    /** Of any meaning, so long as it is another one when the log has grown. */
    readonly size: number;
  };
}[Subject];

export interface Answered<Subject extends StudySubject = StudySubject> {
  readonly study: Subjects[Subject]['answer'];
  /** How many entries were read. */
  readonly asOf: number;
}

export type StudyDesk = <Subject extends StudySubject>(
  order: StudyOrder<Subject>,
  read: () => Promise<LogToStudy>,
) => Promise<Answered<Subject>>;

/**
 * Answers questions on a log, which is read anew only when it has grown: its table is kept between two questions, and what
 * is of the whole shop between two that differ in filters alone.
 */
export function studyDesk(): StudyDesk {
  let kept: { readonly size: number; readonly table: TapTable; readonly asOf: number } | undefined;
  let whole: { readonly of: string; readonly study: WholeStudy } | undefined;

  function answer(order: StudyOrder, table: TapTable): Answered['study'] {
    if (order.subject === 'plan') return planOf(table, order.questions);
    const { questions } = order;
    const of = JSON.stringify([questions.answered, questions.level]);
    if (whole?.of !== of) whole = { of, study: wholeStudyOf(table, questions) };
    return studyOf(table, questions, whole.study);
  }

  return async <Subject extends StudySubject>(
    order: StudyOrder<Subject>,
    read: () => Promise<LogToStudy>,
  ) => {
    if (kept?.size !== order.size) {
      kept = undefined;
      whole = undefined;
      const log = await read();
      kept = { size: order.size, table: tapTable(log), asOf: entriesIn(log) };
    }
    // An order of a subject has the answer of that subject: the compiler does not follow a union that far.
    const study = answer(order as StudyOrder, kept.table);
    return { study, asOf: kept.asOf } as Answered<Subject>;
  };
}
