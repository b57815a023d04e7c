import type { ShopChoice } from './preferences.ts';
import type { Session } from './session.ts';
import type { TwoCopies } from './two-copies.ts';

/** Where the shop stands: a store that cannot be read is never shown as an empty one. */
export type Opening =
  | { readonly kind: 'opening'; readonly waitsForOtherWindow: boolean }
  | {
      readonly kind: 'open';
      readonly session: Session;
      readonly which: ShopChoice;
      /** The second copy and what it was needed for; the demo has none. */
      readonly twoCopies: TwoCopies | null;
      /** The store is of a newer version: it is shown and left as it is. */
      readonly onlyLooking: boolean;
      /** The name of its store; null where that may not be written to. */
      readonly store: string | null;
    }
  | { readonly kind: 'failed'; readonly why: 'newer-store' | 'cannot-read'; readonly error: unknown }
  | { readonly kind: 'outdated' };
