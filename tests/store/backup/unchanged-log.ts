import { readFileSync } from 'node:fs';
import { chained, type Entry } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { readBackup } from '../../../src/store/backup/read-backup.ts';

const old = new URL('../../../shared/old-backups/format-1.jsonl.gz', import.meta.url);

/** The entries of an old backup, which is never edited, so many times over that they are packed too. */
export function unchangedLog(): readonly Entry[] {
  const reading = readBackup(Uint8Array.from(readFileSync(old)));
  if (reading.kind === 'refused') throw new Error(`refused: ${reading.why}`);
  const events = reading.entries.map(({ event }) => event as ShopEvent);
  return chained(
    Array.from({ length: 600 }, (_, at) => ({
      ...(events[at % events.length] as ShopEvent),
      station: events[0]?.station as ShopEvent['station'],
      seq: at + 1,
    })),
  );
}
