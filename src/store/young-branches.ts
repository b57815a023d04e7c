import type { Branch } from '../domain/log/branch.ts';
import type { EventRecord } from './event-record.ts';
import { lastOf } from './station-keys.ts';

/** The young records, in a transaction of whatever kind. */
interface BranchedRecords {
  readonly openKeyCursor: (from?: IDBKeyRange) => Promise<{ readonly key: [string, number] } | null>;
  readonly get: (key: [string, number]) => Promise<EventRecord | undefined>;
}

/** The branches on which young records lie. */
export async function youngBranches(events: BranchedRecords): Promise<readonly Branch[]> {
  const found: Branch[] = [];
  let first = await events.openKeyCursor();
  while (first) {
    const record = await events.get(first.key);
    if (record?.branch) found.push(record.branch);
    first = await events.openKeyCursor(IDBKeyRange.lowerBound(lastOf(first.key[0]), true));
  }
  return found;
}
