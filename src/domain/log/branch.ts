import * as v from 'valibot';
import type { Link } from './chain.ts';
import { type StationId, stationId } from './ids.ts';
import type { LogEvent } from './read-event.ts';
import type { EventId } from './version-vector.ts';

/**
 * A branch of a station's chain. A tablet that was cloned writes on under the station of the other: from some number on
 * the two tell different things under the same identity. Whoever holds one of them keeps the other as a branch, under
 * a station of its own; `after` is the last number that both have in common.
 */
export interface Branch {
  readonly of: StationId;
  readonly after: number;
  readonly station: StationId;
}

/** The branch that begins with an event: whoever finds it gives it the same name. */
export function branchAt({ event, link }: { event: LogEvent; link: Link }): Branch {
  const station = v.parse(stationId, `branch-${link.slice(0, 16)}`);
  return { of: event.station, after: event.seq - 1, station };
}

/** The identity that an event has where it lies, on the chain or on a branch; what came before a branch keeps its own. */
export function identityOn(branch: Branch | undefined, { station, seq }: EventId): EventId {
  return branch && station === branch.of && seq > branch.after
    ? { station: branch.station, seq: seq - branch.after }
    : { station, seq };
}

/** The events of a branch under its own station, numbered from 1; what came before it stays as it was. */
export function toldApart<E extends LogEvent>(event: E, branch: Branch): E {
  const copy = 'event' in event ? { event: toldApart(event.event as LogEvent, branch) } : {};
  return { ...event, ...copy, ...identityOn(branch, event) };
}
