import * as v from 'valibot';
import { registerSchema } from '../set-up/register.ts';
import { envelopeSchema, eventKinds, plainEvent, type ShopEvent, tallyEvent } from './event.ts';
import type { EventId } from './version-vector.ts';

/** An event that a newer version writes: kept and passed on, not counted. */
export interface NewerEvent extends EventId {
  readonly kind: string;
}

/** What a log holds: events of this version, and those of a newer one. */
export type LogEvent = ShopEvent | NewerEvent;

export type ReadEvent =
  | { readonly kind: 'known'; readonly event: ShopEvent }
  | { readonly kind: 'newer'; readonly event: NewerEvent }
  | { readonly kind: 'damaged'; readonly problems: readonly string[] };

const known: ReadonlySet<string> = new Set(eventKinds);
const registers: ReadonlySet<string> = new Set(
  registerSchema.options.map(({ entries }) => entries.register.literal),
);
/** Undoing an undo nests voids. A person nests two; what is deeper than this was not made by a hand. */
export const deepestVoid = 64;

/**
 * Judges a value that comes from outside (a store, a file, a broker). Never throws. A known event is returned
 * as it came, so that fields of a newer version ride along untouched. Newer is an event of an unknown kind, the
 * void of one, and a set-up fact of an unknown kind.
 */
export function readEvent(raw: unknown): ReadEvent {
  let inner = raw;
  let path = '';
  // Voids are opened one by one and not by a schema that calls itself: a foreign one may nest without end.
  for (let depth = 0; depth <= deepestVoid; depth += 1) {
    const head = v.safeParse(envelopeSchema, inner);
    if (!head.success) return damaged(head.issues, path);
    const { kind } = head.output;
    if (!known.has(kind)) return { kind: 'newer', event: raw as NewerEvent };
    if (kind !== 'voided') {
      if (depth === 0 && isOfNewerRegister(inner)) return { kind: 'newer', event: raw as NewerEvent };
      const whole = v.safeParse(depth === 0 ? plainEvent : tallyEvent, inner);
      return whole.success ? { kind: 'known', event: raw as ShopEvent } : damaged(whole.issues, path);
    }
    inner = v.is(withEvent, inner) ? inner.event : undefined;
    path += 'event.';
  }
  return { kind: 'damaged', problems: [`voids nest deeper than ${deepestVoid}`] };
}

const withEvent = v.object({ event: v.unknown() });
const withRegister = v.object({ kind: v.literal('set-up'), set: v.object({ register: v.string() }) });

function isOfNewerRegister(event: unknown): boolean {
  return v.is(withRegister, event) && !registers.has(event.set.register);
}

function damaged(issues: readonly v.BaseIssue<unknown>[], path: string): ReadEvent {
  return {
    kind: 'damaged',
    problems: issues.map((issue) => `${path}${v.getDotPath(issue) ?? ''}: ${issue.message}`),
  };
}
