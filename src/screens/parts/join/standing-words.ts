import type { ReplicaStatus } from '../../../app/replica.ts';
import { clockTime } from '../../../words/date-words.ts';
import { tabletsWords as words } from '../../../words/tablets-words.ts';

/** How the tablet stands with the others, in a few words. */
export function standingWords(status: ReplicaStatus, { zone, now }: { zone: string; now: number }): string {
  switch (status.kind) {
    case 'to-send':
      return words.status.toSend(status.entries);
    case 'unreachable':
      return words.status.unreachable(clockTime(status.since, { zone, now }));
    default:
      return words.status[status.kind];
  }
}
