import * as v from 'valibot';
import { envelopeSchema, eventKinds, eventSchema, type ShopEvent } from './event.ts';
import type { EventId } from './version-vector.ts';

/** An event of a kind that a newer version writes: kept and passed on, not counted. */
export interface NewerEvent extends EventId {
  readonly kind: string;
}

export type ReadEvent =
  | { readonly kind: 'known'; readonly event: ShopEvent }
  | { readonly kind: 'newer'; readonly event: NewerEvent }
  | { readonly kind: 'damaged'; readonly problems: readonly string[] };

const known: ReadonlySet<string> = new Set(eventKinds);

/**
 * Judges a value that comes from outside (a store, a file, a broker). Never throws. A known event is returned
 * as it came, so that fields of a newer version ride along untouched.
 */
export function readEvent(raw: unknown): ReadEvent {
  const head = v.safeParse(envelopeSchema, raw);
  if (!head.success) return damaged(head.issues);
  if (!known.has(head.output.kind)) return { kind: 'newer', event: raw as NewerEvent };
  const whole = v.safeParse(eventSchema, raw);
  return whole.success ? { kind: 'known', event: raw as ShopEvent } : damaged(whole.issues);
}

function damaged(issues: readonly v.BaseIssue<unknown>[]): ReadEvent {
  return {
    kind: 'damaged',
    problems: issues.map((issue) => `${v.getDotPath(issue) ?? ''}: ${issue.message}`),
  };
}
