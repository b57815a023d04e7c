/** Why a typed count is refused. */
export type NumberProblem =
  | { readonly kind: 'missing' }
  | { readonly kind: 'not-a-number' }
  /** Its digits stand in groups of three: 1,000 is a thousand to one reader and one to another. */
  | { readonly kind: 'grouped' }
  | { readonly kind: 'not-whole' }
  | { readonly kind: 'too-small'; readonly least: number }
  | { readonly kind: 'too-large'; readonly most: number };

export interface Bounds {
  readonly least: number;
  readonly most: number;
}

export type WholeNumber =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly problem: NumberProblem };

const plainNumber = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i;

const inGroups = /^[+-]?\d{1,3}([.,]\d{3})+$/;

/** Reads a count as a person types it, within bounds that hold for both ends. Nothing is rounded or guessed. */
export function readWholeNumber(typed: string, bounds: Bounds): WholeNumber {
  const text = typed.trim();
  if (text === '') return refuse({ kind: 'missing' });
  if (inGroups.test(text)) return refuse({ kind: 'grouped' });
  if (!plainNumber.test(text)) return refuse({ kind: 'not-a-number' });
  return judgeWholeNumber(Number(text.replace(',', '.')), bounds);
}

export function judgeWholeNumber(value: number, { least, most }: Bounds): WholeNumber {
  if (Number.isNaN(value)) return refuse({ kind: 'not-a-number' });
  if (value > most) return refuse({ kind: 'too-large', most });
  if (value < least) return refuse({ kind: 'too-small', least });
  if (!Number.isInteger(value)) return refuse({ kind: 'not-whole' });
  return { ok: true, value };
}

function refuse(problem: NumberProblem): WholeNumber {
  return { ok: false, problem };
}
