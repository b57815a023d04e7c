import './not-saved-bar.css';
import type { ComponentChildren } from 'preact';
import { PressButton } from '../press/press-button.tsx';

export interface NotSavedBarProps {
  /** The two words that must be seen. */
  word: string;
  /** What waits to be saved, and that it is still here. */
  detail: ComponentChildren;
  retryLabel: string;
  onRetry: () => void;
  exportLabel: string;
  onExport: () => void;
  testId?: string | undefined;
}

/** Says across the whole width that something was not saved; stays until the person acts. */
export const NotSavedBar = (props: NotSavedBarProps) => (
  <section class="not-saved" role="alert" data-testid={props.testId}>
    <div class="not-saved-words">
      <strong class="not-saved-word">{props.word}</strong>
      <p class="not-saved-detail">{props.detail}</p>
    </div>
    <div class="not-saved-acts">
      <PressButton size="bench-small" icon="retry" label={props.retryLabel} onAct={props.onRetry} />
      <PressButton size="bench-small" icon="export" label={props.exportLabel} onAct={props.onExport} />
    </div>
  </section>
);
