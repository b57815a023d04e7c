import './disclosure.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';

export interface DisclosureProps {
  summary: ComponentChildren;
  children: ComponentChildren;
  /** Open at first. */
  open?: boolean | undefined;
  /** Told at each opening: what is costly to make can wait until then. */
  onOpen?: (() => void) | undefined;
  /** Quiet: no more than a line while it is closed, for a side matter. */
  look?: 'framed' | 'quiet' | undefined;
  testId?: string | undefined;
}

/** What is behind a line, one tap away. */
export const Disclosure = ({ summary, children, open, onOpen, look, testId }: DisclosureProps) => (
  <details
    class="disclosure"
    data-look={look}
    open={open}
    onToggle={(event) => event.currentTarget.open && onOpen?.()}
    data-testid={testId}
  >
    <summary class="disclosure-summary">
      <span class="disclosure-way">
        <Icon name="down" size={24} />
      </span>
      <span>{summary}</span>
    </summary>
    <div class="disclosure-body">{children}</div>
  </details>
);
