import type { LaneOf } from './exchange.ts';

/** What is kept apart on the broker: the log, which everybody reads, and the photos, which a tablet may leave out. */
export type StreamKind = 'log' | 'photos';

/** The names of a shop on the broker. */
export const streamOf = (shop: string, kind: StreamKind = 'log') =>
  kind === 'log' ? `TW_${shop}` : `TW_${shop}_ph`;
export const inboxOf = (shop: string, seat: string) => `_INBOX_${shop}_${seat}`;

/** `tw.<shop>.ev.<seat>`, `tw.<shop>.run.<seat>.<length>`, or `tw.<shop>.ph.<seat>.<hash>.<pieces>`. */
export function subjectOf(shop: string, { seat, lane }: LaneOf): string {
  const [kind, ...rest] = lane.split('.');
  return ['tw', shop, kind, seat, ...rest].join('.');
}

/** The seat and the lane of a subject, whatever lies there; undefined when it is none of the shop's. */
export function readSubject(shop: string, subject: string): LaneOf | undefined {
  const [tw, of, kind, seat, ...rest] = subject.split('.');
  if (tw !== 'tw' || of !== shop || kind === undefined || seat === undefined) return undefined;
  return { seat, lane: [kind, ...rest].join('.') };
}
