import './notice.css';
import type { ComponentChildren } from 'preact';
import { Icon } from '../icon/icon.tsx';
import type { IconName } from '../icon/icon-paths.ts';

export type NoticeTone = 'info' | 'warn' | 'error' | 'saved';

export interface NoticeProps {
  tone: NoticeTone;
  title: string;
  children?: ComponentChildren;
  actions?: ComponentChildren | undefined;
  testId?: string | undefined;
}

const icons: Readonly<Record<NoticeTone, IconName>> = {
  info: 'info',
  warn: 'warn',
  error: 'cross',
  saved: 'check',
};

/** A message that stands in the page until its cause is gone; an error is read aloud at once. */
export const Notice = ({ tone, title, children, actions, testId }: NoticeProps) => (
  <section class="notice" data-tone={tone} role={tone === 'error' ? 'alert' : undefined} data-testid={testId}>
    <Icon name={icons[tone]} size={32} />
    <div class="notice-words">
      <p class="notice-title">{title}</p>
      {children && <div>{children}</div>}
    </div>
    {actions && <div class="notice-actions">{actions}</div>}
  </section>
);
