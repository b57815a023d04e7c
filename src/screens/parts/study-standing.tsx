import './study-standing.css';
import type { Studied, StudyState } from '../../app/study.ts';
import type { StudySubject } from '../../domain/study/study-desk.ts';
import { Notice } from '../../ui/notice/notice.tsx';
import { PressButton } from '../../ui/press/press-button.tsx';
import { studyWords as words } from '../../words/study-words.ts';

/** The newest answers, and the questions that they are to; null before there are any. */
export function latestOf<Subject extends StudySubject>(state: StudyState<Subject>): Studied<Subject> | null {
  return state.kind === 'none' ? null : state.last;
}

/** Says while the log is read, and when it could not be. */
export const StudyStanding = <Subject extends StudySubject>({
  state,
  again,
}: {
  state: StudyState<Subject>;
  again: () => void;
}) => {
  if (state.kind === 'failed')
    return (
      <Notice
        tone="error"
        title={words.failed}
        actions={<PressButton icon="retry" label={words.again} onAct={again} />}
      >
        {words.failedHelp}
      </Notice>
    );
  const isFirst = latestOf(state) === null;
  return (
    <p class="study-working" role="status" data-testid="study-working">
      {state.kind === 'ready' ? '' : isFirst ? words.working : words.workingAgain}
    </p>
  );
};
