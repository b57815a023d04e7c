import type { Outcome, RecountReason } from '../log/event.ts';
import type { BatchId, LotId, PartId, ReasonId, RouteId, StageId, TrayId, VariantId } from '../log/ids.ts';
import type { PhotoFacts, PhotoHash, PhotoShown } from '../log/photo-facts.ts';
import type { Grade } from '../log/place.ts';
import type { ShelfPlace } from '../log/shelf-facts.ts';
import type { CountReason, Heap } from '../log/stores-facts.ts';
import type { NewTargets } from '../plan/targets/judge-targets.ts';
import type { QualityLimit } from '../sampling/quality-limits.ts';
import type { RegisterSet } from '../set-up/register.ts';
import type { Voidable } from '../shop/voids.ts';

/** Where on the stage screen a tap falls, and how many pieces the screen showed there when it fell. */
export interface Spot {
  readonly tray: TrayId;
  readonly stage: StageId;
  readonly at: 'waiting' | 'held';
  readonly grade: Grade;
  readonly shown: number;
}

/** One count of a pencilled route card: pieces that a stage passed, or that had a flaw there. */
export type CardLine =
  | { readonly kind: 'pass'; readonly stage: StageId; readonly pieces: number }
  | {
      readonly kind: 'flaw';
      readonly stage: StageId;
      readonly pieces: number;
      readonly reasons: readonly ReasonId[];
      readonly outcome: Outcome;
    };

/** One line of a delivery: pieces of a part, and what they cost together in whole minor units; null is not known. */
export interface DeliveryLine {
  readonly part: PartId;
  readonly pieces: number;
  readonly cost: number | null;
}

/** Finished pieces that are taken from a place; `shown` is how many the screen said were there. */
export interface ShelfLine {
  readonly variant: VariantId;
  readonly grade: Grade;
  readonly from: ShelfPlace;
  readonly pieces: number;
  readonly shown: number;
  /** What each brought, in minor units; null is not known, or nothing to be known. */
  readonly price: number | null;
}

/** Everything that a person can ask of the shop. */
export type Command =
  | {
      readonly kind: 'make-trays';
      readonly variant: VariantId;
      readonly batch: BatchId;
      readonly pieces: number;
      readonly trays: number;
    }
  | { readonly kind: 'pass'; readonly spot: Spot; readonly pieces: number }
  | {
      readonly kind: 'flaw';
      readonly spot: Spot;
      readonly pieces: number;
      readonly reasons: readonly ReasonId[];
      readonly outcome: Outcome;
    }
  | { readonly kind: 'load'; readonly spot: Spot; readonly pieces: number }
  /** Seconds at a stage were reworked and are firsts again; `gone` are the blemishes that can be seen no longer. */
  | {
      readonly kind: 'raise';
      readonly spot: Omit<Spot, 'grade'>;
      readonly pieces: number;
      readonly gone: readonly ReasonId[];
    }
  /** The same of finished ones on the shelf; those of one tray where it is named. */
  | {
      readonly kind: 'raise-finished';
      readonly variant: VariantId;
      readonly tray: TrayId | null;
      readonly pieces: number;
      readonly gone: readonly ReasonId[];
    }
  | { readonly kind: 'split'; readonly spot: Spot; readonly pieces: number }
  | { readonly kind: 'join'; readonly tray: TrayId; readonly into: TrayId }
  /** A new code for a tray that shares its own with another. */
  | { readonly kind: 'recode'; readonly tray: TrayId }
  | {
      readonly kind: 'recount';
      readonly spot: Omit<Spot, 'shown'>;
      readonly counted: number;
      readonly why: RecountReason;
      readonly note: string;
    }
  | {
      readonly kind: 'change-route';
      readonly route: RouteId;
      readonly name: string;
      readonly stages: readonly StageId[];
      readonly destinations: ReadonlyMap<StageId, StageId>;
    }
  | { readonly kind: 'enter-card'; readonly tray: TrayId; readonly lines: readonly CardLine[] }
  | { readonly kind: 'receive-parts'; readonly parts: readonly DeliveryLine[]; readonly note: string }
  | {
      readonly kind: 'count-parts';
      readonly part: PartId;
      readonly heap: Heap;
      readonly counted: number;
      readonly why: CountReason;
      readonly note: string;
    }
  /** Of a delivery of `lot` pieces as many were checked as its plan asks for, and `bad` were found. */
  | {
      readonly kind: 'sample-parts';
      readonly part: PartId;
      readonly lot: number;
      readonly limit: QualityLimit;
      readonly bad: number;
      readonly note: string;
    }
  /** Parts saved from scrap were cleaned; `shown` is how many the screen said were to be. */
  | {
      readonly kind: 'clean-parts';
      readonly part: PartId;
      readonly back: number;
      readonly lost: number;
      readonly shown: number;
    }
  /** Tenths of a per cent, of °C and of a per cent of humidity. */
  | {
      readonly kind: 'read-moisture';
      readonly lot: LotId;
      readonly percent: number;
      readonly air: { readonly celsius: number; readonly humidity: number } | null;
    }
  | {
      readonly kind: 'photograph-piece';
      readonly tray: TrayId;
      readonly stage: StageId;
      readonly reasons: readonly ReasonId[];
      readonly photo: PhotoFacts;
    }
  | { readonly kind: 'photograph'; readonly shows: PhotoShown; readonly photo: PhotoFacts }
  /** The bytes of these may go; all in one act. */
  | { readonly kind: 'let-photos-go'; readonly photos: readonly PhotoHash[] }
  /** New targets of some batches, all in one act. */
  | { readonly kind: 'set-targets'; readonly targets: readonly NewTargets[] }
  | { readonly kind: 'move-on-shelf'; readonly lines: readonly ShelfLine[]; readonly to: ShelfPlace }
  | { readonly kind: 'set'; readonly set: RegisterSet }
  | { readonly kind: 'undo'; readonly events: readonly Voidable[] }
  | { readonly kind: 'begin-spell'; readonly stage: StageId }
  | { readonly kind: 'end-spell'; readonly stage: StageId };

type CommandKind = Command['kind'];
export type CommandOf<Kind extends CommandKind> = Extract<Command, { kind: Kind }>;
