import './last-act.css';
import type { ComponentChildren } from 'preact';

export interface LastActProps {
  /** What the line is. */
  label: string;
  /** What, where, new count. */
  text: ComponentChildren;
  /** How long ago. */
  ago?: string | undefined;
  testId?: string | undefined;
}

/** The last act in words, at a fixed place; it never hides by itself. */
export const LastAct = ({ label, text, ago, testId }: LastActProps) => (
  <p class="last-act" data-testid={testId}>
    <span class="last-act-label">
      {label}
      {ago && `, ${ago}`}:
    </span>
    <span class="last-act-text">{text}</span>
  </p>
);
