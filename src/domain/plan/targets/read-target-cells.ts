import { readDay } from '../../command/calendar-day.ts';
import { type Bounds, type NumberProblem, readWholeNumber } from '../../command/whole-number.ts';
import type { ShopDay } from '../../log/ids.ts';
import { chanceBounds, goodBounds } from './target-bounds.ts';

/** What is wrong with one cell of a line. */
export type CellProblem =
  | { readonly kind: 'number'; readonly column: 'good' | 'chance'; readonly problem: NumberProblem }
  /** 1,000 or 1.000: a spreadsheet of one country means a thousand by it and that of another means one. */
  | { readonly kind: 'separated'; readonly column: 'good' | 'chance'; readonly text: string }
  | { readonly kind: 'no-day'; readonly text: string }
  /** 03/04/2027 is a day in March or in April. */
  | { readonly kind: 'which-day'; readonly text: string };

export type CellReading<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: CellProblem };

const separated = /^[+-]?\d[\d\s.,'’]*[.,'’\s]\d+$/u;

/** A number of good ones; null where the cell is empty. */
export function readGood(text: string): CellReading<number | null> {
  return readNumber(text, { column: 'good', bounds: goodBounds });
}

/** A chance in whole per cent, with its sign or without; null where the cell is empty. */
export function readChance(text: string): CellReading<number | null> {
  return readNumber(text.replace(/\s*%$/, ''), { column: 'chance', bounds: chanceBounds });
}

function readNumber(
  text: string,
  { column, bounds }: { readonly column: 'good' | 'chance'; readonly bounds: Bounds },
): CellReading<number | null> {
  const typed = text.trim();
  if (typed === '') return { ok: true, value: null };
  if (separated.test(typed)) return { ok: false, problem: { kind: 'separated', column, text: typed } };
  const read = readWholeNumber(typed, bounds);
  return read.ok ? read : { ok: false, problem: { kind: 'number', column, problem: read.problem } };
}

const turned = /^(\d{1,2})([./-])(\d{1,2})\2(\d{4})$/;

/**
 * A due day; null where the cell is empty. Spreadsheets turn 2027-04-30 into the way of their country: day, month and year
 * with points or with strokes are understood where they can mean but one day.
 */
export function readDue(text: string): CellReading<ShopDay | null> {
  const typed = text.trim();
  const [, first = '', sign = '', second = '', year = ''] = turned.exec(typed) ?? [];
  if (year === '') return dayOr(typed, typed);
  const byMonth = `${year}-${first.padStart(2, '0')}-${second.padStart(2, '0')}`;
  const byDay = `${year}-${second.padStart(2, '0')}-${first.padStart(2, '0')}`;
  if (sign === '.' || byDay === byMonth) return dayOr(byDay, typed);
  const days = [byDay, byMonth].flatMap((each) => readDay(each) ?? []);
  if (days.length > 1) return { ok: false, problem: { kind: 'which-day', text: typed } };
  return dayOr(days[0] ?? typed, typed);
}

function dayOr(text: string, typed: string): CellReading<ShopDay | null> {
  const day = readDay(text);
  return day === undefined
    ? { ok: false, problem: { kind: 'no-day', text: typed } }
    : { ok: true, value: day };
}
