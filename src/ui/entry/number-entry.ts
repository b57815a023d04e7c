/** What numbers an entry takes. */
export interface NumberLimits {
  least?: number | undefined;
  most?: number | undefined;
  /** Digits after the decimal sign; none by default. */
  decimals?: number | undefined;
}

/** Why a number is refused. */
export type Refusal =
  | { why: 'not-a-number' }
  | { why: 'too-fine'; decimals: number }
  | { why: 'below'; least: number }
  | { why: 'above'; most: number };

/** What was typed, read: nothing at all is not zero. */
export type NumberEntry =
  | { kind: 'nothing' }
  | { kind: 'number'; value: number }
  | ({ kind: 'refused' } & Refusal);

const shape = /^[-−]?\d+(?:[.,](\d+))?$/u;

/** Reads a typed number with a point or a comma; never changes what was typed. */
export const readNumber = (typed: string, { least, most, decimals = 0 }: NumberLimits): NumberEntry => {
  const text = typed.trim();
  if (text === '') return { kind: 'nothing' };
  const match = shape.exec(text);
  if (!match) return { kind: 'refused', why: 'not-a-number' };
  if ((match[1] ?? '').length > decimals) return { kind: 'refused', why: 'too-fine', decimals };
  const value = Number(text.replace(',', '.').replace('−', '-'));
  if (least !== undefined && value < least) return { kind: 'refused', why: 'below', least };
  if (most !== undefined && value > most) return { kind: 'refused', why: 'above', most };
  return { kind: 'number', value };
};

/** A number as an entry holds it, with as many decimals as the entry takes and no more than it needs. */
export const writeNumber = (value: number, decimals = 0): string => String(Number(value.toFixed(decimals)));

/** One step up or down from what was typed; what cannot be read is left as it stands. An untouched entry steps from 0. */
export const stepped = (typed: string, by: number, decimals = 0): string => {
  const read = readNumber(typed, { decimals });
  if (read.kind === 'refused') return typed;
  return writeNumber((read.kind === 'number' ? read.value : 0) + by, decimals);
};

/** One sign more, as typed on a pad: a lone zero gives way to the first digit, a second decimal sign is left out. */
export const withSign = (typed: string, sign: string): string => {
  const isDecimalSign = sign === '.' || sign === ',';
  if (isDecimalSign && /[.,]/u.test(typed)) return typed;
  if (isDecimalSign && typed === '') return `0${sign}`;
  return typed === '0' && !isDecimalSign ? sign : typed + sign;
};

/** The last sign taken away. */
export const withoutLast = (typed: string): string => [...typed].slice(0, -1).join('');
