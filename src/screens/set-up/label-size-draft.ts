import { type Bounds, readWholeNumber } from '../../domain/command/whole-number.ts';
import { problemOfLabelSize } from '../../domain/label/label-size.ts';
import type { LabelSizeFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { millimetres, labelWords as words } from '../../words/label-words.ts';
import { numberProblemWords, problemWords } from '../../words/problem-words.ts';
import { nameProblem, type Problems, type Reading, readingOf } from '../parts/form/reading.ts';

export const lengthFields = ['width', 'height'] as const;
export const sheetLengthFields = [
  'sheetWidth',
  'sheetHeight',
  'left',
  'top',
  'acrossStep',
  'downStep',
] as const;
export const countFields = ['columns', 'rows'] as const;
type LengthField = (typeof lengthFields)[number] | (typeof sheetLengthFields)[number];
type CountField = (typeof countFields)[number];

/** A size of label as it is typed: lengths in mm. */
export interface LabelSizeDraft extends Readonly<Record<LengthField | CountField, string>> {
  readonly name: string;
  readonly on: 'sheet' | 'roll';
}

/** Bounds in mm, as the log has them. */
const lengths: Readonly<Record<LengthField, Bounds>> = {
  width: { least: 25, most: 300 },
  height: { least: 15, most: 300 },
  sheetWidth: { least: 50, most: 600 },
  sheetHeight: { least: 50, most: 600 },
  left: { least: 0, most: 300 },
  top: { least: 0, most: 300 },
  acrossStep: { least: 0, most: 300 },
  downStep: { least: 0, most: 300 },
};
const counts: Readonly<Record<CountField, Bounds>> = {
  columns: { least: 1, most: 20 },
  rows: { least: 1, most: 40 },
};

/** What a new size begins with: one that many shops have. */
const usual = {
  width: 7000,
  height: 3700,
  sheet: {
    width: 21_000,
    height: 29_700,
    columns: 3,
    rows: 8,
    left: 0,
    top: 50,
    acrossStep: 7000,
    downStep: 3700,
  },
};

export function labelSizeDraftOf(size: LabelSizeFact | undefined): LabelSizeDraft {
  const { width, height } = size ?? usual;
  const sheet = size?.sheet ?? usual.sheet;
  return {
    name: size?.name ?? '',
    on: size?.sheet === null ? 'roll' : 'sheet',
    width: millimetres(width),
    height: millimetres(height),
    sheetWidth: millimetres(sheet.width),
    sheetHeight: millimetres(sheet.height),
    columns: String(sheet.columns),
    rows: String(sheet.rows),
    left: millimetres(sheet.left),
    top: millimetres(sheet.top),
    acrossStep: millimetres(sheet.acrossStep),
    downStep: millimetres(sheet.downStep),
  };
}

type Value = Omit<LabelSizeFact, 'retired'>;

/** Reads a size. Fields of a sheet count only while the labels come on one. */
export function readLabelSize(draft: LabelSizeDraft): Reading<Value, LabelSizeDraft> {
  const isSheet = draft.on === 'sheet';
  const fields = [...lengthFields, ...(isSheet ? sheetLengthFields : [])];
  const problems: Problems<LabelSizeDraft> = {
    name: nameProblem(draft.name),
    ...Object.fromEntries(fields.map((field) => [field, lengthProblem(field, draft[field])])),
    ...Object.fromEntries(
      (isSheet ? countFields : []).map((field) => [field, countProblem(field, draft[field])]),
    ),
  };
  const read = readingOf(problems, () => sizeTyped(draft));
  return read.ok ? fitting(read.value) : read;
}

function sizeTyped(draft: LabelSizeDraft): Value {
  const length = (field: LengthField) => readHundredths(draft[field]) ?? 0;
  const sheet = {
    width: length('sheetWidth'),
    height: length('sheetHeight'),
    columns: Number(draft.columns),
    rows: Number(draft.rows),
    left: length('left'),
    top: length('top'),
    acrossStep: length('acrossStep'),
    downStep: length('downStep'),
  };
  return {
    name: tidyText(draft.name),
    width: length('width'),
    height: length('height'),
    sheet: draft.on === 'sheet' ? sheet : null,
  };
}

/** Says at its field when labels do not fit their sheet. */
function fitting(value: Value): Reading<Value, LabelSizeDraft> {
  const problem = problemOfLabelSize(value);
  if (!problem) return { ok: true, value };
  const said = problemWords(problem, new Map());
  const across = problem.way === 'across';
  return problem.kind === 'labels-overlap'
    ? { ok: false, problems: across ? { acrossStep: said } : { downStep: said } }
    : { ok: false, problems: across ? { columns: said } : { rows: said } };
}

const plainLength = /^(\d+([.,]\d{0,2})?|[.,]\d{1,2})\s*(mm)?$/i;

/** A typed length in mm as hundredths of a millimetre; null when it is none. */
function readHundredths(typed: string): number | null {
  const text = typed.trim();
  if (!plainLength.test(text)) return null;
  return Math.round(Number.parseFloat(text.replace(',', '.')) * 100);
}

function lengthProblem(field: LengthField, typed: string): string | undefined {
  const { least, most } = lengths[field];
  const length = readHundredths(typed);
  const fits = length !== null && length >= least * 100 && length <= most * 100;
  return fits ? undefined : words.badLength(least, most);
}

function countProblem(field: CountField, typed: string): string | undefined {
  const read = readWholeNumber(typed, counts[field]);
  return read.ok ? undefined : numberProblemWords(read.problem);
}
