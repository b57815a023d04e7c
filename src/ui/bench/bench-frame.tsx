import './bench-frame.css';
import type { ComponentChildren } from 'preact';

export interface BenchFrameProps {
  /** What this screen is, for a screen reader. */
  label: string;
  /** The code and the count. */
  head: ComponentChildren;
  /** The acting buttons: a `BenchGrid`. */
  acts: ComponentChildren;
  /** What was done last and whether it is saved; stands in the dead strip under the acts. */
  says: ComponentChildren;
  /** Undo at the start, what ends a stage or the day at the end: never in the row of the counting buttons. */
  foot: ComponentChildren;
  /** Lies over the foot when something was not saved, and is empty else; nothing else moves. */
  bar: ComponentChildren;
  /** Small signs in the dead edge at the foot; they act on nothing. */
  signs?: ComponentChildren | undefined;
  /** Where the usual button and undo stand; the other side is the mirror image. */
  side?: 'left' | 'right' | undefined;
  testId?: string | undefined;
}

/** A bench screen: nothing acts within 40 px of its edges, and a dead strip parts counting from ending. */
export const BenchFrame = (props: BenchFrameProps) => (
  <main class="bench" aria-label={props.label} data-side={props.side} data-testid={props.testId}>
    <div class="bench-head">{props.head}</div>
    <div class="bench-acts">{props.acts}</div>
    <div class="bench-says">{props.says}</div>
    <div class="bench-foot">{props.foot}</div>
    <div class="bench-signs">{props.signs}</div>
    <div class="bench-bar">{props.bar}</div>
  </main>
);
