import type { JournalLine } from '../../domain/log/journal-line.ts';
import { oneAtATime } from './one-at-a-time.ts';

export interface NewLine {
  readonly text: string;
  readonly says: JournalLine;
}

interface Waiting {
  readonly lines: readonly NewLine[];
  readonly resolve: () => void;
  readonly reject: (why: unknown) => void;
}

/**
 * Gathers what is to be written while a write is under way, so that one flush serves all of it.
 * @param turn lets what has been asked meanwhile come in
 */
export function lineBatches(
  write: (lines: readonly NewLine[]) => Promise<void>,
  turn: () => Promise<void>,
): (lines: readonly NewLine[]) => Promise<void> {
  const writing = oneAtATime();
  let waiting: Waiting[] = [];

  async function writeWaiting(): Promise<void> {
    await turn();
    const batch = waiting;
    waiting = [];
    try {
      await write(batch.flatMap(({ lines }) => lines));
      for (const { resolve } of batch) resolve();
    } catch (error) {
      for (const { reject } of batch) reject(error);
    }
  }

  return (lines) =>
    new Promise((resolve, reject) => {
      waiting.push({ lines, resolve, reject });
      if (waiting.length === 1) void writing(writeWaiting);
    });
}
