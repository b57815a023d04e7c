import type { ComponentChildren } from 'preact';

export interface BenchGridProps {
  /** At most eight `PressButton`s, always in the same order; the usual one is `main`. */
  children: ComponentChildren;
  /** Columns on a screen on its side; an upright one has two. */
  columns?: 2 | 3 | 4 | undefined;
}

/** The acting buttons of a bench screen, 28 px apart; the gaps trigger nothing. */
export const BenchGrid = ({ children, columns = 4 }: BenchGridProps) => (
  <div class="bench-grid" data-columns={columns}>
    {children}
  </div>
);
