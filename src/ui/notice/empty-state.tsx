import './empty-state.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';
import type { IconName } from '../icon/icon-paths.ts';

export interface EmptyStateProps {
  title: string;
  /** What to do next. */
  children?: ComponentChildren;
  action?: ComponentChildren | undefined;
  icon?: IconName | undefined;
  testId?: string | undefined;
}

/** Stands where nothing is yet, and says what to do next. */
export const EmptyState = ({ title, children, action, icon, testId }: EmptyStateProps) => (
  <section class="empty" data-testid={testId}>
    {icon && <Icon name={icon} size={64} />}
    <h2>{title}</h2>
    {children && <p>{children}</p>}
    {action}
  </section>
);
