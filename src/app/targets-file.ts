import Papa from 'papaparse';
import type { TargetsColumn } from '../domain/export/targets-table.ts';
import type { TargetLine } from '../domain/plan/targets/judge-targets.ts';
import { isHeadingOf } from '../words/table-words.ts';
import { unguarded } from './csv.ts';

/** Bytes; ten thousand lines take less than one megabyte. */
const mostBytes = 4_000_000;
export const mostLines = 20_000;

const needed = ['batch', 'variant', 'good'] as const;
const columns: readonly TargetsColumn[] = [...needed, 'due', 'chance'];

/** A file of targets as lines to be judged, or why it is none. */
export type TargetsRead =
  | { readonly kind: 'lines'; readonly lines: readonly TargetLine[]; readonly unused: readonly string[] }
  | { readonly kind: 'empty' | 'too-large' | 'too-many-lines' }
  | { readonly kind: 'no-column' | 'column-twice'; readonly column: TargetsColumn };

/**
 * Reads CSV as spreadsheets write it: UTF-8 with a byte order mark or without, UTF-16 with one, or else Windows-1252;
 * commas, semicolons or tabs; any line ends. Columns are found by their headings, in whatever order. Blank lines say
 * nothing and are passed over; every other line comes back, broken or not.
 */
export function readTargets(bytes: Uint8Array): TargetsRead {
  if (bytes.length > mostBytes) return { kind: 'too-large' };
  const { text, sign } = withoutHint(decoded(bytes));
  const delimiter = sign ?? delimiterOf(text);
  const { data, errors } = Papa.parse<string[]>(text, { delimiter });
  const [headings, ...rows] = data;
  if (headings === undefined || isBlank(headings)) return { kind: 'empty' };
  if (rows.length > mostLines + 1) return { kind: 'too-many-lines' };
  const places = new Map<TargetsColumn, number>();
  for (const column of columns) {
    const found = headings.flatMap((heading, at) => (isHeadingOf(unguarded(heading), column) ? [at] : []));
    if (found.length > 1) return { kind: 'column-twice', column };
    if (found[0] !== undefined) places.set(column, found[0]);
  }
  const missing = needed.find((column) => !places.has(column));
  if (missing) return { kind: 'no-column', column: missing };
  const inQuotes = new Set(errors.flatMap(({ type, row }) => (type === 'Quotes' && row ? [row] : [])));
  const used = new Set(places.values());
  return {
    kind: 'lines',
    lines: rows.flatMap((row, at) =>
      isBlank(row) ? [] : [lineOf({ row, at, places, headings, isOpen: inQuotes.has(at + 1) })],
    ),
    unused: headings.filter((heading, at) => !used.has(at) && heading.trim() !== ''),
  };
}

const isBlank = (row: readonly string[]) => row.every((cell) => cell.trim() === '');

interface Row {
  readonly row: readonly string[];
  readonly at: number;
  readonly places: ReadonlyMap<TargetsColumn, number>;
  readonly headings: readonly string[];
  readonly isOpen: boolean;
}

function lineOf({ row, at, places, headings, isOpen }: Row): TargetLine {
  const cell = (column: TargetsColumn) => unguarded(row[places.get(column) ?? -1] ?? '').trim();
  const isLonger = !isBlank(row.slice(headings.length));
  return {
    line: at + 2,
    batch: cell('batch'),
    variant: cell('variant'),
    good: cell('good'),
    due: cell('due'),
    chance: cell('chance'),
    broken: isOpen ? 'quote' : isLonger ? 'too-many-cells' : undefined,
  };
}

function decoded(bytes: Uint8Array): string {
  const [first, second] = bytes;
  if (first === 0xff && second === 0xfe) return new TextDecoder('utf-16le').decode(bytes);
  if (first === 0xfe && second === 0xff) return new TextDecoder('utf-16be').decode(bytes);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder('windows-1252').decode(bytes);
  }
}

/** Some spreadsheets say in a first line of its own what stands between cells. */
function withoutHint(text: string): { readonly text: string; readonly sign: string | undefined } {
  const [hint, sign] = /^"?sep=([,;\t])"?\r?\n/i.exec(text) ?? [];
  return { text: hint === undefined ? text : text.slice(hint.length), sign };
}

/** What divides the headings into the most that are known. */
function delimiterOf(text: string): string {
  const known = [',', ';', '\t'].map((delimiter) => {
    const [headings = []] = Papa.parse<string[]>(text, { delimiter, preview: 1 }).data;
    return {
      delimiter,
      count: headings.filter((heading) => columns.some((column) => isHeadingOf(heading, column))).length,
    };
  });
  return known.reduce((best, each) => (each.count > best.count ? each : best)).delimiter;
}
