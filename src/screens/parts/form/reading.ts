import { problemOfName, problemOfNote } from '../../../domain/set-up/text.ts';
import { textProblemWords } from '../../../words/problem-words.ts';

/** What is wrong in the fields of a form, in words, by field. */
export type Problems<Draft> = { readonly [Field in keyof Draft]?: string | undefined };

/** What a form amounts to: a value, or what is wrong in which field. */
export type Reading<Value, Draft> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problems: Problems<Draft> };

/** The reading of a form; `value` is asked for only when no field has a problem. */
export function readingOf<Value, Draft>(
  problems: Problems<Draft>,
  value: () => Value,
): Reading<Value, Draft> {
  return Object.values(problems).some((problem) => problem !== undefined)
    ? { ok: false, problems }
    : { ok: true, value: value() };
}

export function nameProblem(typed: string): string | undefined {
  const problem = problemOfName(typed);
  return problem ? textProblemWords(problem) : undefined;
}

export function noteProblem(typed: string): string | undefined {
  const problem = problemOfNote(typed);
  return problem ? textProblemWords(problem) : undefined;
}
