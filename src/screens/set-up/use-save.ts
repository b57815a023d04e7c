import { useState } from 'preact/hooks';
import type { Problem } from '../../domain/command/problem.ts';
import type { RegisterSet } from '../../domain/set-up/register.ts';
import { problemWords } from '../../words/problem-words.ts';
import { useSession, useShop } from '../parts/app-context.ts';

/** The field at which a refusal is said. */
export type FieldOfProblem = 'name' | 'wood' | 'other';

export interface Saving {
  /** Saves a fact; true when it is on disk. A refusal is kept to be said at its field. */
  readonly save: (set: RegisterSet) => Promise<boolean>;
  /** The words of the refusal, for the field asked for. */
  readonly errorAt: (field: FieldOfProblem) => string | undefined;
}

export function useSave(): Saving {
  const session = useSession();
  const { registers } = useShop();
  const [problem, setProblem] = useState<Problem | null>(null);
  return {
    async save(set) {
      const result = await session.act({ kind: 'set', set });
      setProblem(result.kind === 'refused' ? result.problem : null);
      return result.kind === 'saved';
    },
    errorAt: (field) =>
      problem && fieldOf(problem) === field ? problemWords(problem, registers) : undefined,
  };
}

function fieldOf({ kind }: Problem): FieldOfProblem {
  if (kind === 'text' || kind === 'same-name') return 'name';
  return kind === 'no-wood' ? 'wood' : 'other';
}
