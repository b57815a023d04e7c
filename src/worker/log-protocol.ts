/** What passes between a window and the worker that does one job on the log for it. Types only. */
import type { DustQuestion } from '../domain/study/dust-minutes.ts';
import type { StudyOrder } from '../domain/study/study-desk.ts';
import type { CopyJobs } from '../store/copy-jobs.ts';
import type { FileShelf } from '../store/file-shelf.ts';
import type { LogSource } from '../store/log-to-copy.ts';

export type JobName = keyof CopyJobs;
type Input<Name extends JobName> = Parameters<CopyJobs[Name]>[0];

/** The files of the tablet are in the window's hands: the worker asks for each by a number. */
export interface ShelfCall {
  readonly call: number;
  readonly method: keyof FileShelf;
  readonly args: readonly unknown[];
}

/** A job with its lines comes in pieces, so that no message holds the window up for long. */
export type ToWorker =
  | { readonly kind: 'lines'; readonly lines: readonly string[] }
  | {
      readonly [Name in JobName]: { readonly kind: 'job'; readonly name: Name; readonly input: Input<Name> };
    }[JobName]
  /** Seal the old records of the store of this name. */
  | { readonly kind: 'seal'; readonly name: string }
  /** Answer questions on a log; its lines, if it is given in lines, have come before. One may follow another. */
  | { readonly kind: 'study'; readonly order: StudyOrder; readonly log: LogSource }
  /** Add up the minutes of dust on a log; its lines, if it is given in lines, have come before. */
  | { readonly kind: 'dust'; readonly question: DustQuestion; readonly log: LogSource }
  | { readonly kind: 'answer'; readonly call: number; readonly result: unknown }
  | { readonly kind: 'refusal'; readonly call: number; readonly problem: string };

export type FromWorker =
  | { readonly kind: 'done'; readonly result: unknown }
  | { readonly kind: 'failed'; readonly problem: string }
  | ({ readonly kind: 'shelf' } & ShelfCall);
