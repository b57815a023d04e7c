import './panel.css';
import type { ComponentChildren } from 'preact';
import { useId } from 'preact/hooks';

export interface PanelProps {
  title: ComponentChildren;
  children: ComponentChildren;
  /** A line under the title. */
  lead?: ComponentChildren | undefined;
  /** Buttons at the end of the title line. */
  actions?: ComponentChildren | undefined;
  /** The level of the title; 2 by default. */
  level?: 2 | 3 | undefined;
  /** Marks the panel at its bead: something is well, wants a look, is wrong. */
  tone?: 'plain' | 'saved' | 'warn' | 'flaw' | undefined;
  testId?: string | undefined;
}

/** A sheet of paper hung from a turned bead, with its title. */
export const Panel = ({ title, children, lead, actions, level = 2, tone = 'plain', testId }: PanelProps) => {
  const id = useId();
  const Title = level === 2 ? 'h2' : 'h3';
  return (
    <section class="panel" data-tone={tone} data-testid={testId} aria-labelledby={id}>
      <header class="panel-head">
        <div>
          <Title id={id} class="panel-title">
            {title}
          </Title>
          {lead && <p class="panel-lead">{lead}</p>}
        </div>
        {actions && <div class="panel-actions">{actions}</div>}
      </header>
      <div class="panel-body">{children}</div>
    </section>
  );
};
