import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cellsOf, csvOf } from '../../src/app/csv.ts';
import type { Cell, Table } from '../../src/domain/export/table.ts';
import { parsedByRfc4180 } from './rfc-4180.ts';

const table = (columns: readonly string[], ...rows: readonly (readonly Cell[])[]): Table => ({
  columns,
  rows,
});

/** The cells as a table gives them to a reader: a number as its digits, nothing as no text. */
const asText = ({ columns, rows }: Table) => [
  columns,
  ...rows.map((row) => row.map((cell) => (cell === null ? '' : String(cell)))),
];

describe('the grammar that the tests read with is that of RFC 4180 (October 2005), section 2', () => {
  test.each([
    ['1: records on lines of their own', 'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n'],
    ['2: the last line may lack its break', 'aaa,bbb,ccc\r\nzzz,yyy,xxx'],
    ['5: fields in quotes', '"aaa","bbb","ccc"\r\nzzz,yyy,xxx'],
  ])('%s', (_, text) => {
    expect(parsedByRfc4180(text)).toEqual([
      ['aaa', 'bbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  test('6: a line break inside quotes belongs to the field', () => {
    expect(parsedByRfc4180('"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx')).toEqual([
      ['aaa', 'b\r\nbb', 'ccc'],
      ['zzz', 'yyy', 'xxx'],
    ]);
  });

  test('7: a quote inside a field is written twice', () => {
    expect(parsedByRfc4180('"aaa","b""bb","ccc"')).toEqual([['aaa', 'b"bb', 'ccc']]);
  });

  test('a quote in a field without quotes, or an open one, is no CSV', () => {
    expect(() => parsedByRfc4180('aaa,b"bb,ccc')).toThrow();
    expect(() => parsedByRfc4180('"aaa,bbb')).toThrow();
  });
});

describe('a table as CSV', () => {
  test('is the examples of RFC 4180 with every field in quotes, after a mark that says UTF-8', () => {
    expect(csvOf(table(['aaa', 'b\r\nbb', 'ccc'], ['zzz', 'b"bb', 'x,x']))).toBe(
      '\ufeff"aaa","b\r\nbb","ccc"\r\n"zzz","b""bb","x,x"\r\n',
    );
  });

  test('keeps numbers as they are, below zero too, and leaves nothing empty', () => {
    expect(csvOf(table(['n'], [-12], [0.825], [null], [0]))).toBe(
      '\ufeff"n"\r\n"-12"\r\n"0.825"\r\n""\r\n"0"\r\n',
    );
  });

  test('has its headings even when there is no row', () => {
    expect(csvOf(table(['Tray', 'Pieces']))).toBe('\ufeff"Tray","Pieces"\r\n');
  });

  // The signs: OWASP, "CSV Injection" (with the line feed added in August 2025), and the null of ASVS 5.0 1.2.10.
  test.each([
    '=1+2',
    '+1',
    '-12',
    '@x',
    '\t=1',
    '\r=1',
    '\n=1',
    '\0=1',
    '=1+2";=1+2',
    '=1+2\'" ;,=1+2',
    '=1\n=2',
    ' =1',
    '\u00a0=1',
    '＝1',
    '＠x',
  ])('makes a text cell that begins like %j inert', (text) => {
    const [, [cell = '']] = parsedByRfc4180(csvOf(table(['note'], [text])).slice(1)) as [string[], string[]];
    expect(cell).toBe(`'${text}`);
  });

  test('guards headings as well', () => {
    expect(csvOf(table(['=cmd']))).toBe('\ufeff"\'=cmd"\r\n');
  });

  test.each(['haft', "O'Hara", "'quoted'", 'a=b', '1+1', 'x-y', 'me@x', 'Ça va', '–5', '−5', ''])(
    'leaves %j as it is',
    (text) => expect(csvOf(table(['t'], [text]))).toBe(`\ufeff"t"\r\n"${text}"\r\n`),
  );
});

describe('read back', () => {
  const nasty = fc.array(
    fc.oneof(
      fc.constantFrom(
        '=',
        '+',
        '-',
        '@',
        '\t',
        '\r',
        '\n',
        '\0',
        "'",
        '"',
        ',',
        ';',
        ' ',
        '\u00a0',
        '＝',
        '\ufeff',
        'a',
      ),
      fc.string({ unit: 'grapheme', maxLength: 3 }),
    ),
    { maxLength: 6 },
  );
  const cell: fc.Arbitrary<Cell> = fc.oneof(
    { weight: 4, arbitrary: nasty.map((signs) => signs.join('')) },
    fc.integer(),
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.constant(null),
  );
  const tables = fc.integer({ min: 1, max: 4 }).chain((width) =>
    fc.record({
      columns: fc.array(
        nasty.map((signs) => signs.join('')),
        { minLength: width, maxLength: width },
      ),
      rows: fc.array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 5 }),
    }),
  );

  test('every table comes back cell by cell', () => {
    fc.assert(
      fc.property(tables, (each) => {
        expect(cellsOf(csvOf(each))).toEqual(asText(each));
      }),
    );
  });

  test('a reader that knows the standard alone reads the same, with the guard where a formula could begin', () => {
    fc.assert(
      fc.property(tables, (each) => {
        const [headings = [], ...rows] = parsedByRfc4180(csvOf(each).slice(1));
        expect([headings, ...rows].map((row) => row.length)).toEqual(asText(each).map((row) => row.length));
        for (const [y, row] of rows.entries()) {
          for (const [x, read] of row.entries()) {
            const given = each.rows[y]?.[x] ?? '';
            if (typeof given === 'number') expect(read).toBe(String(given));
            else {
              expect(read).not.toMatch(/^[=+\-@\t\r\n\0＝＋－＠]/u);
              expect([given, `'${given}`]).toContain(read);
            }
          }
        }
      }),
    );
  });

  test('only the guard is taken off: an apostrophe of one’s own stays', () => {
    expect(cellsOf('"t"\r\n"\'hello"\r\n"\'=1"\r\n"\'\'=1"\r\n"-1"\r\n')).toEqual([
      ['t'],
      ["'hello"],
      ['=1'],
      ["'=1"],
      ['-1'],
    ]);
  });
});
