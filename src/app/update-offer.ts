/** What stands in the way of a reload: a tray in mid-work, a tap that is not on disk, something typed and not saved. */
export type Busy = 'tapping' | 'not-saved' | 'typing';

/** Where a new version of the app stands. */
export type Offer =
  | { readonly kind: 'none' }
  | { readonly kind: 'waiting' }
  /** The other windows are being asked. */
  | { readonly kind: 'asking' }
  /** A window is in mid-work: this one, or another with the address `at` (its hash). Asked again by itself. */
  | { readonly kind: 'held'; readonly by: Busy; readonly at: string | undefined }
  | { readonly kind: 'applying' }
  /** No copy of the records could be made before, so nothing was changed. */
  | { readonly kind: 'no-copy' }
  /** The browser did not let it in; this version goes on. */
  | { readonly kind: 'did-not-take' };

/** What letting a version in must know of the shop. */
export interface UpdateNeeds {
  readonly busyHere: () => Busy | undefined;
  /** Keeps a copy of the records: a version may bring another layout of the store. A rejection stops the update. */
  readonly beforeApply: () => Promise<void>;
}
