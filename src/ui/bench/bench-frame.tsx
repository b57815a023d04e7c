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
  testId?: string | undefined;
}

/** A bench screen: nothing acts within 40 px of its edges, and a dead strip parts counting from ending. */
export const BenchFrame = ({ label, head, acts, says, foot, bar, testId }: BenchFrameProps) => (
  <main class="bench" aria-label={label} data-testid={testId}>
    <div class="bench-head">{head}</div>
    <div class="bench-acts">{acts}</div>
    <div class="bench-says">{says}</div>
    <div class="bench-foot">{foot}</div>
    <div class="bench-bar">{bar}</div>
  </main>
);
