import type { Lane, Placed } from './exchange.ts';

/** The names of a shop on the broker. */
export const streamOf = (shop: string) => `TW_${shop}`;
export const inboxOf = (shop: string, seat: string) => `_INBOX_${shop}_${seat}`;

/** `tw.<shop>.ev.<seat>`, or `tw.<shop>.run.<seat>.<length>`. */
export function subjectOf(shop: string, { seat, lane }: { seat: string; lane: Lane }): string {
  const [kind, ...rest] = lane.split('.');
  return ['tw', shop, kind, seat, ...rest].join('.');
}

/** The seat and the lane of a subject, whatever lies there; undefined when it is none of the shop's. */
export function readSubject(shop: string, subject: string): Pick<Placed, 'seat' | 'lane'> | undefined {
  const [tw, of, kind, seat, ...rest] = subject.split('.');
  if (tw !== 'tw' || of !== shop || kind === undefined || seat === undefined) return undefined;
  return { seat, lane: [kind, ...rest].join('.') };
}
