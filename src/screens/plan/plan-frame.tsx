import type { ComponentChildren } from 'preact';
import { stillDrawing } from '../../ui/turn/turns.ts';
import { planWords as words } from '../../words/plan-words.ts';
import type { PlanPage } from '../parts/plan-pages.ts';

export interface PlanFrameProps {
  readonly page: PlanPage;
  readonly rack: ComponentChildren;
  /** Something is still being worked out. */
  readonly busy: boolean;
  readonly actions?: ComponentChildren;
  readonly children: ComponentChildren;
}

/** A page of the plan under its title. */
export const PlanFrame = ({ page, rack, busy, actions, children }: PlanFrameProps) => (
  <main class="plan" aria-busy={busy || stillDrawing.value} data-testid={`plan-${page}`}>
    <header class="plan-head">
      <div>
        <h1>{words.pages[page].title}</h1>
        <p>{words.pages[page].lead}</p>
      </div>
      {actions}
    </header>
    {rack}
    {children}
  </main>
);
