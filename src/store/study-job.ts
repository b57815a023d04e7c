import { type Answered, type StudyOrder, studyDesk } from '../domain/study/study-desk.ts';
import type { LogSource } from './log-to-copy.ts';
import { readLogToStudy } from './log-to-study.ts';

/** Answers questions on the log of a source. Rejects when it cannot be read, or the questions cannot be asked. */
export type StudyJob = (order: StudyOrder, log: LogSource) => Promise<Answered>;

/** Answers question after question where it is called; what was read for one is kept for the next. */
export function studyJob(): StudyJob {
  const answer = studyDesk();
  return (order, log) => answer(order, () => readLogToStudy(log));
}
