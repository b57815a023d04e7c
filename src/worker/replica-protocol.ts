/** What passes between a window and the worker that keeps its shop the same as the broker's copy. Types only. */
import type { Refusal } from '../replication/exchange.ts';
import type { Joined } from '../replication/joined.ts';
import type { Invitation } from '../replication/joining-link.ts';
import type { PhotosStatus, ReplicaStatus, SetAside } from '../replication/replica-status.ts';

/** Why a tablet could not join. */
export type NotJoined =
  | { readonly kind: 'refused'; readonly why: Refusal }
  | { readonly kind: 'unreachable' }
  /** All seats are taken. */
  | { readonly kind: 'no-seat' };

export type ToReplica =
  /** Take a seat. `mayInvite` keeps the key of the shop on this tablet. */
  | {
      readonly kind: 'join';
      readonly invitation: Invitation;
      readonly tablet: string;
      readonly mayInvite: boolean;
    }
  /** Keep the store of this name and the broker's copy the same, until the worker is ended. */
  | { readonly kind: 'run'; readonly store: string; readonly joined: Joined }
  /** Look at once at what would be looked at after a while. */
  | { readonly kind: 'hurry' }
  /** Leave off; answered by 'stopped'. */
  | { readonly kind: 'stop' };

export type FromReplica =
  | { readonly kind: 'joined'; readonly joined: Joined }
  | { readonly kind: 'not-joined'; readonly because: NotJoined }
  | { readonly kind: 'status'; readonly status: ReplicaStatus }
  | { readonly kind: 'photos-status'; readonly status: PhotosStatus }
  /** A photo came in. */
  | { readonly kind: 'photo-came' }
  | { readonly kind: 'aside'; readonly message: SetAside }
  /** Something came in. The store took a new station when it is renewed. */
  | { readonly kind: 'merged'; readonly renewed: boolean }
  | { readonly kind: 'stopped' };
