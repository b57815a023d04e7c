import './means.css';
import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';

export interface MeansProps {
  /** What the button is called, such as 'What this means'. */
  label: string;
  /** One line. */
  children: ComponentChildren;
  /** Of the button. */
  testId?: string | undefined;
}

/**
 * A line that says what a figure means, behind a tap. It stands beside the figure or its heading; the line comes under
 * both, over the whole width: in running text, in a flex box that wraps, and in a grid.
 */
export const Means = ({ label, children, testId }: MeansProps) => {
  const id = useId();
  const [open, setOpen] = useState(false);
  return (
    <span class="means">
      <button
        type="button"
        class="means-button"
        aria-label={label}
        aria-expanded={open}
        aria-controls={id}
        onClick={() => setOpen(!open)}
        data-testid={testId}
      >
        <span class="means-sign" aria-hidden="true">
          {'?'}
        </span>
      </button>
      <span id={id} class="means-words" hidden={!open}>
        {children}
      </span>
    </span>
  );
};
