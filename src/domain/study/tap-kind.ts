import type { OutcomeKind, ShopEvent, TallyEvent } from '../log/event.ts';
import type { PartId, ReasonId, StageId } from '../log/ids.ts';
import { atStage, type Grade, type Move } from '../log/place.ts';

/** What a tap says besides when, by whom and of which tray. Thousands of taps say the same. */
export type TapKind = Visit | Stretch;

/** Visits of some pieces that ended together, in a pass or in a flaw. */
export interface Visit {
  readonly kind: 'visit';
  readonly stage: StageId;
  readonly pieces: number;
  /** How many of them came again: they or a later stage had sent them back. */
  readonly again: number;
  readonly flaw: Flaw | null;
  readonly trials: readonly Trial[];
  /** The tablet's clock was in doubt at the tap. */
  readonly doubtful: boolean;
}

/** Work that ends in no verdict: pieces that were put to a cure, and what is left of a spell after its last tap. */
interface Stretch {
  readonly kind: 'loaded' | 'ended';
  readonly stage: StageId;
  readonly pieces: number;
  readonly doubtful: boolean;
}

export interface Flaw {
  readonly outcome: OutcomeKind;
  /** Where the pieces were sent back to; null where they were not. */
  readonly to: StageId | null;
  /** Each once. */
  readonly reasons: readonly ReasonId[];
  /** Parts that a scrap saved; none where the pieces were not scrapped. */
  readonly saved: readonly PartId[];
}

/**
 * What a visit means for whether pieces survive their route. Each stage tries a piece once: a piece that is sent back is
 * neither lost nor through, and its trial goes on until it has left the stage that sent it back. What becomes of it on
 * its way there again, at whatever stage, decides that trial and no other: it has survived the stages before already.
 */
interface Trial {
  /** Whose trial it is: the stage that had sent the pieces back, or the one that they are at for the first time. */
  readonly stage: StageId;
  readonly pieces: number;
  /** As they came. */
  readonly grade: Grade;
  readonly end: 'on' | 'lowered' | 'back' | 'scrapped';
  /** Whether the trial is decided by this: the pieces are through, or lost. */
  readonly over: boolean;
}

/** What an event says as a tap; `begun` for one that begins a spell; undefined for one that is no tap at a stage. */
export function tapKindOf(event: ShopEvent): TapKind | 'begun' | undefined {
  const doubtful = event.clock === 'doubtful';
  switch (event.kind) {
    case 'passed':
    case 'flawed':
      return visitOf(event, doubtful);
    case 'hold-begun':
      return { kind: 'loaded', stage: event.stage, pieces: piecesIn(event.moves), doubtful };
    case 'spell-ended':
      return { kind: 'ended', stage: event.stage, pieces: 0, doubtful };
    case 'spell-begun':
      return 'begun';
    default:
      return undefined;
  }
}

type Judged = Extract<TallyEvent, { kind: 'passed' | 'flawed' }>;

function visitOf(event: Judged, doubtful: boolean): Visit {
  const { stage, pieces, again } = event;
  return {
    ...{ kind: 'visit', stage, pieces, again, doubtful },
    flaw: event.kind === 'flawed' ? flawOf(event) : null,
    trials: event.moves.flatMap((move) => trialOf(event, move) ?? []),
  };
}

function flawOf({ outcome, reasons }: Extract<Judged, { kind: 'flawed' }>): Flaw {
  return {
    outcome: outcome.kind,
    to: outcome.kind === 'sent-back' ? outcome.to : null,
    reasons: [...new Set(reasons)],
    saved: outcome.kind === 'scrapped' ? [...new Set(outcome.saved)] : [],
  };
}

function trialOf(event: Judged, { from, to, pieces }: Move): Trial | undefined {
  if (!from || !to || !atStage(from)) return undefined;
  const { redo, grade } = from;
  const end = endOf(event);
  const isThrough = redo === null ? end !== 'back' : !(atStage(to) && to.redo !== null);
  return { stage: redo ?? event.stage, pieces, grade, end, over: end === 'scrapped' || isThrough };
}

function endOf(event: Judged): Trial['end'] {
  if (event.kind === 'passed') return 'on';
  switch (event.outcome.kind) {
    case 'mended':
      return 'on';
    case 'second':
      return 'lowered';
    case 'sent-back':
      return 'back';
    case 'scrapped':
      return 'scrapped';
  }
}

function piecesIn(moves: readonly Move[]): number {
  return moves.reduce((sum, { pieces }) => sum + pieces, 0);
}
