import type { LabelSizeProblem } from '../label/label-size.ts';
import type { TrayFacts } from '../log/event.ts';
import type { ResourceId, StageId } from '../log/ids.ts';
import type { TextProblem } from '../set-up/text.ts';
import type { NumberProblem } from './whole-number.ts';

/** Why a command is refused; the screens have the sentence for each. */
export type Problem =
  /** The store is of a newer version of the app. */
  | { readonly kind: 'only-looking' }
  /** A part of the app could not be fetched. */
  | { readonly kind: 'code-not-there' }
  | { readonly kind: 'no-such-tray' }
  | { readonly kind: 'no-such-batch' }
  | { readonly kind: 'no-such-variant' }
  | { readonly kind: 'no-such-stage' }
  | { readonly kind: 'route-is-empty' }
  | { readonly kind: 'stage-off-route'; readonly stage: StageId }
  | { readonly kind: 'nothing-there' }
  /** No finished pieces of the kind are where they would be taken from. */
  | { readonly kind: 'nothing-on-shelf' }
  | { readonly kind: 'too-many'; readonly there: number }
  /** No seconds stand there that could be raised. */
  | { readonly kind: 'no-seconds' }
  | { readonly kind: 'no-reason' }
  | { readonly kind: 'not-an-earlier-stage' }
  /** With the clamps or rack, where several stages share them. */
  | { readonly kind: 'hold-is-full'; readonly free: number; readonly resource?: ResourceId }
  | { readonly kind: 'count-is-right' }
  | { readonly kind: 'trays-differ'; readonly a: TrayFacts; readonly b: TrayFacts }
  | { readonly kind: 'same-tray' }
  | { readonly kind: 'already-taken-back' }
  | { readonly kind: 'cannot-be-taken-back' }
  | { readonly kind: 'no-letter' }
  /** Another station has the letter by an earlier claim; `free` is one that this station can take. */
  | { readonly kind: 'letter-lost'; readonly letter: string; readonly free: string | null }
  | {
      readonly kind: 'stage-still-holds';
      readonly stages: readonly { readonly stage: StageId; readonly pieces: number }[];
    }
  | { readonly kind: 'same-name' }
  | { readonly kind: 'no-wood' }
  | { readonly kind: 'no-stage' }
  /** A part that the shop has no word on. */
  | { readonly kind: 'no-part' }
  /** Nothing of a part is to be cleaned. */
  | { readonly kind: 'none-to-clean' }
  /** A lot of blanks that the shop has no word on. */
  | { readonly kind: 'no-lot' }
  /** No photo was named. */
  | { readonly kind: 'no-photo' }
  /** A mark that says nothing. */
  | { readonly kind: 'no-note' }
  /** A route card without a count on it. */
  | { readonly kind: 'card-is-empty' }
  /** What is wrong with one line of a route card, counted from 0. */
  | { readonly kind: 'card-line'; readonly line: number; readonly problem: Problem }
  /** Labels that lie over one another, or past the edge of their sheet. */
  | LabelSizeProblem
  | { readonly kind: 'number'; readonly problem: NumberProblem }
  | { readonly kind: 'text'; readonly problem: TextProblem };
