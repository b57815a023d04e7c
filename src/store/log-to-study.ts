import type { ShopEvent } from '../domain/log/event.ts';
import { type LogEvent, readEvent } from '../domain/log/read-event.ts';
import type { LogToStudy } from '../domain/study/log-of-taps.ts';
import type { LogSource } from './log-to-copy.ts';
import { readInStore } from './open-to-read.ts';
import { readRecords } from './reading.ts';
import { wholeLogIn } from './reads-of-sealed.ts';
import { openSealed } from './sealed-reads.ts';

/**
 * The log that is to be studied: what lies in the store of a name, sealed runs as they lie, or these events, a line of JSON
 * each, under the identity that they have here. What is damaged or of a newer version is left out. Rejects when the store
 * cannot be read.
 */
export function readLogToStudy(log: LogSource): Promise<LogToStudy> {
  return log.kind === 'store'
    ? readInStore(log.name, async (db) => {
        const { sealed, records } = await wholeLogIn(db, (each) => {
          const run = openSealed(each);
          return run && { run, branch: each.record.branch };
        });
        const runs = sealed.filter((run) => run !== undefined);
        return { runs, events: readRecords(records).events };
      })
    : Promise.resolve({ runs: [], events: knownIn(log.lines) });
}

function knownIn(lines: readonly string[]): readonly ShopEvent[] {
  return lines.flatMap((line) => {
    const read = readEvent(JSON.parse(line) as LogEvent);
    return read.kind === 'known' ? [read.event] : [];
  });
}
