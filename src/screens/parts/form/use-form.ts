import { useState } from 'preact/hooks';
import type { Problem } from '../../../domain/command/problem.ts';
import type { RegisterSet } from '../../../domain/set-up/register.ts';
import { problemWords } from '../../../words/problem-words.ts';
import { useSession, useShop } from '../app-context.ts';
import type { KeptDrafts } from './kept-drafts.ts';
import type { Reading } from './reading.ts';

export interface Form<Draft> {
  readonly draft: Draft;
  readonly change: (part: Partial<Draft>) => void;
  /** What is wrong at a field: said once it was touched or a save was tried. */
  readonly errorAt: (field: keyof Draft) => string | undefined;
  /** A refusal that belongs to no field of the form. */
  readonly refusal: string | undefined;
  /** Something is typed that is not saved. */
  readonly changed: boolean;
  /** Forgets what was typed. */
  readonly restore: () => void;
  /** Saves what is typed; false when something is wrong, which then stands at its field. */
  readonly save: () => Promise<boolean>;
  /** Sets a fact that is not what is typed: puts away, brings back. */
  readonly put: (set: RegisterSet) => Promise<boolean>;
  /** How often a save was in vain: each time the first field in error gets the focus. */
  readonly failures: number;
}

export interface FormParts<Draft, Value> {
  readonly id: string;
  readonly kept: KeptDrafts<Draft>;
  /** The fields as the shop has them. */
  readonly start: Draft;
  readonly read: (draft: Draft) => Reading<Value, Draft>;
  readonly toSet: (value: Value) => RegisterSet;
}

/** The fields of one fact while they are typed. Nothing that was typed is lost but by `restore`. */
export function useForm<Draft extends object, Value>(parts: FormParts<Draft, Value>): Form<Draft> {
  const { id, kept, start, read, toSet } = parts;
  const session = useSession();
  const { registers } = useShop();
  const drafts = kept(session);
  const [typed, setTyped] = useState(drafts.get(id));
  const [reopened] = useState(typed !== undefined);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [failures, setFailures] = useState(0);
  const [refused, setRefused] = useState<Problem | null>(null);
  const draft = typed ?? start;
  const reading = read(draft);
  const spoken = (field: string) => reopened || failures > 0 || touched.has(field);

  function keep(next: Draft | undefined): void {
    drafts.keep(id, next);
    setTyped(next);
    setRefused(null);
  }

  async function put(set: RegisterSet): Promise<boolean> {
    const result = await session.act({ kind: 'set', set });
    setRefused(result.kind === 'refused' ? result.problem : null);
    if (result.kind === 'refused') setFailures((count) => count + 1);
    return result.kind === 'saved';
  }

  return {
    draft,
    change(part) {
      setTouched(new Set([...touched, ...Object.keys(part)]));
      keep({ ...draft, ...part });
    },
    errorAt(field) {
      const problem = reading.ok ? undefined : reading.problems[field];
      if (problem !== undefined && spoken(String(field))) return problem;
      return refused && fieldOf(refused) === field ? problemWords(refused, registers) : undefined;
    },
    refusal: refused && !(fieldOf(refused) in draft) ? problemWords(refused, registers) : undefined,
    changed: typed !== undefined,
    restore: () => keep(undefined),
    async save() {
      if (!reading.ok) {
        setFailures((count) => count + 1);
        return false;
      }
      const saved = await put(toSet(reading.value));
      if (saved) keep(undefined);
      return saved;
    },
    put,
    failures,
  };
}

/** The field at which a refusal of the shop is said; an empty text where no field is to blame. */
function fieldOf({ kind }: Problem): string {
  return fields[kind] ?? '';
}

const fields: { readonly [Kind in Problem['kind']]?: string } = {
  text: 'name',
  'same-name': 'name',
  'no-wood': 'species',
  'no-stage': 'stage',
  'no-note': 'note',
};
