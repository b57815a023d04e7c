import { type DustMinutes, type DustQuestion, dustMinutes } from '../domain/study/dust-minutes.ts';
import { tapTable } from '../domain/study/log-of-taps.ts';
import type { LogSource } from './log-to-copy.ts';
import { readLogToStudy } from './log-to-study.ts';

/** Minutes of dust on the log of a source. Rejects when it cannot be read. */
export async function dustJob(question: DustQuestion, log: LogSource): Promise<readonly DustMinutes[]> {
  return dustMinutes(tapTable(await readLogToStudy(log)), question);
}
