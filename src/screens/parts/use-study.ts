import { useEffect, useState } from 'preact/hooks';
import { openStudy, type StudyState } from '../../app/study.ts';
import type { QuestionsOf, StudySubject } from '../../domain/study/study-desk.ts';
import { useApp, useSession } from './app-context.ts';

/** Asks the whole log, and asks it again when it is handed another object with questions, as after each change of the shop. */
export function useStudy<Subject extends StudySubject>(
  subject: Subject,
  questions: QuestionsOf<Subject>,
): { state: StudyState<Subject>; again: () => void } {
  const session = useSession();
  const app = useApp();
  const [door] = useState(() => openStudy({ subject, session, store: app.database() }));
  useEffect(() => () => door.close(), [door]);
  useEffect(() => void door.ask(questions), [door, questions]);
  return { state: door.state.value, again: () => void door.ask(questions) };
}
