import type { Comparison } from '../../domain/study/comparison.ts';
import type { SeriesName } from '../../domain/study/signal-series.ts';
import type { Study, StudyQuestions } from '../../domain/study/study.ts';

/** What pages ask for themselves. */
export interface Asked {
  readonly comparison: Comparison | null;
  readonly charted: SeriesName | null;
}

/** The newest answers, and the questions that they are to: those asked since may be others. */
interface Studied {
  readonly study: Study;
  readonly questions: StudyQuestions;
}

export interface PageProps extends Studied {
  readonly asked: Asked;
  /** Changes a part of what is asked; the same function at every drawing. */
  readonly ask: (part: Partial<Asked>) => void;
}
