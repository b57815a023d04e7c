import type { Refusal } from './exchange.ts';
import type { AsideReason } from './message.ts';

/** How a tablet stands with the broker. */
export type ReplicaStatus =
  | { readonly kind: 'off' }
  /** It is finding out what the broker and the tablet lack. */
  | { readonly kind: 'meeting' }
  | { readonly kind: 'up-to-date' }
  /** So many entries are here and not yet there. */
  | { readonly kind: 'to-send'; readonly entries: number }
  /** Since when (ms UTC), and how many entries wait to be sent; null where that is not known yet. */
  | { readonly kind: 'unreachable'; readonly since: number; readonly entries: number | null }
  | { readonly kind: 'refused'; readonly why: Refusal };

/** How the photos of a tablet stand. */
export interface PhotosStatus {
  /** Photos that are here and not yet there, as far as it is this tablet's part to send them. */
  readonly toSend: number;
  /** Photos that are there and not yet here. */
  readonly toFetch: number;
  /** Why the broker takes no photos, or gives none. */
  readonly refused: Refusal | null;
}

/** A message that was set aside: it is left where it is, and what else comes goes on. */
export interface SetAside {
  readonly at: number;
  readonly seat: string;
  readonly reason: AsideReason;
  readonly problem: string;
}
