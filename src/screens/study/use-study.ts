import { useEffect, useState } from 'preact/hooks';
import { openStudy, type StudyState } from '../../app/study.ts';
import type { StudyQuestions } from '../../domain/study/study.ts';
import { useApp, useSession } from '../parts/app-context.ts';

/** Asks the whole log, and asks it again when it is handed another object with questions, as after each change of the shop. */
export function useStudy(questions: StudyQuestions): { state: StudyState; again: () => void } {
  const session = useSession();
  const app = useApp();
  const [door] = useState(() => openStudy({ session, store: app.database() }));
  useEffect(() => () => door.close(), [door]);
  useEffect(() => void door.ask(questions), [door, questions]);
  return { state: door.state.value, again: () => void door.ask(questions) };
}
