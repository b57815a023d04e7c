import * as v from 'valibot';
import { problemOfLabelSize } from '../label/label-size.ts';
import { type FactOf, type RegisterName, type RegisterSet, registerSchema } from '../set-up/register.ts';
import {
  problemOfMarkNote,
  problemOfName,
  problemOfNote,
  type TextProblem,
  tidyText,
} from '../set-up/text.ts';
import type { Problem } from './problem.ts';

/** A set-up fact with its name, its caution or its note as they are kept. */
export function tidied(set: RegisterSet): RegisterSet {
  if (set.register === 'mark') return { ...set, value: { ...set.value, note: tidyText(set.value.note) } };
  const { name } = set.value;
  const caution = 'caution' in set.value ? { caution: tidyText(set.value.caution) } : {};
  // Only texts change: the value still belongs to its register, which a spread of a union cannot say.
  return { ...set, value: { ...set.value, name: tidyText(name), ...caution } } as RegisterSet;
}

/**
 * What a person can get wrong in a set-up fact, or null: a text, a number, a list that is too long. Nothing that
 * the log could not read again is let through: what no person types (a colour, an id) throws TypeError.
 */
export function problemOfFact(set: RegisterSet): Problem | null {
  const text = problemOfTexts(set.value);
  if (text?.kind === 'empty' && set.register === 'mark') return { kind: 'no-note' };
  if (text) return { kind: 'text', problem: text };
  const result = v.safeParse(registerSchema, set);
  if (!result.success) return problemOfIssue(result.issues[0]);
  return set.register === 'label-size' ? problemOfLabelSize(set.value) : null;
}

function problemOfTexts(fact: FactOf<RegisterName>): TextProblem | null {
  if ('note' in fact) return problemOfMarkNote(fact.note);
  return problemOfName(fact.name) ?? ('caution' in fact ? problemOfNote(fact.caution) : null);
}

function problemOfIssue(issue: v.BaseIssue<unknown>): Problem {
  switch (issue.type) {
    case 'max_value':
    case 'max_length':
      return { kind: 'number', problem: { kind: 'too-large', most: Number(issue.requirement) } };
    case 'min_value':
      return { kind: 'number', problem: { kind: 'too-small', least: Number(issue.requirement) } };
    case 'integer':
    case 'safe_integer':
      return { kind: 'number', problem: { kind: 'not-whole' } };
    case 'number':
      return { kind: 'number', problem: { kind: 'not-a-number' } };
    default:
      throw new TypeError(`${v.getDotPath(issue) ?? ''}: ${issue.message}`);
  }
}
