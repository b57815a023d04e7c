import { HeatPanel } from './heat-panel.tsx';
import { ParetoPanel } from './pareto-panel.tsx';
import type { PageProps } from './study-page-props.ts';

/** What goes wrong, by reason and by place. */
export const FlawsPage = ({ study, questions }: PageProps) => (
  <>
    <ParetoPanel flaws={study.flaws} />
    <HeatPanel cells={study.heat} route={questions.routes.stages} />
  </>
);
