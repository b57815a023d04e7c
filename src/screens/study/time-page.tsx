import { HoursPanel } from './hours-panel.tsx';
import { LearningPanel } from './learning-panel.tsx';
import { LostTimePanel } from './lost-time-panel.tsx';
import { PieceTimesPanel } from './piece-times-panel.tsx';
import type { PageProps } from './study-page-props.ts';

/** How long pieces take, whether they go quicker, and where the hours went. */
export const TimePage = ({ study, questions }: PageProps) => {
  const route = questions.routes.stages;
  return (
    <>
      <LostTimePanel lost={study.scrappedTime} />
      <PieceTimesPanel times={study.times} route={route} />
      <HoursPanel worked={study.worked} route={route} />
      <LearningPanel learning={study.learning} route={route} />
    </>
  );
};
