import { useEffect, useState } from 'preact/hooks';
import { openStudy, type StudyState } from '../../app/study.ts';
import type { StudyQuestions } from '../../domain/study/study.ts';
import { useApp, useSession } from '../parts/app-context.ts';

/**
 * Asks the whole log, and asks it again when the questions or the shop have changed. The questions must be the same object
 * as long as nothing in them has changed.
 */
export function useStudy(questions: StudyQuestions): { state: StudyState; again: () => void } {
  const session = useSession();
  const app = useApp();
  const [door] = useState(() => openStudy({ session, store: app.database() }));
  useEffect(() => () => door.close(), [door]);
  const view = session.view.value;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the shop that is shown has changed when its view has
  useEffect(() => void door.ask(questions), [door, questions, view]);
  return { state: door.state.value, again: () => void door.ask(questions) };
}
