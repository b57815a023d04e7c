import { describe, expect, test } from 'vitest';
import { mostLines, readTargets } from '../../src/app/targets-file.ts';

const bytesOf = (text: string) => new TextEncoder().encode(text);
const linesOf = (text: string | Uint8Array) => {
  const read = readTargets(typeof text === 'string' ? bytesOf(text) : text);
  if (read.kind !== 'lines') throw new Error(`no lines, but ${read.kind}`);
  return read.lines;
};
const spring = { batch: 'Spring', variant: 'Ash, copper', good: '60', due: '2026-04-30', chance: '90' };

function utf16(text: string, littleEnd: boolean): Uint8Array {
  const bytes = new Uint8Array(2 * text.length + 2);
  const view = new DataView(bytes.buffer);
  [0xfeff, ...[...text].map((sign) => sign.charCodeAt(0))].forEach((unit, at) => {
    view.setUint16(2 * at, unit, littleEnd);
  });
  return bytes;
}

describe('a file of targets is read', () => {
  // RFC 4180 for commas, quotes and line ends; the others are common practice of spreadsheets, no source.
  const plain = 'batch,variant,good,due,chance\r\nSpring,"Ash, copper",60,2026-04-30,90\r\n';
  test.each([
    ['as RFC 4180 has it', plain],
    ['with a byte order mark', `\ufeff${plain}`],
    ['with bare line feeds', plain.replaceAll('\r\n', '\n')],
    ['with bare carriage returns', plain.replaceAll('\r\n', '\r')],
    ['without a last line end', plain.trimEnd()],
    ['with semicolons', 'batch;variant;good;due;chance\nSpring;Ash, copper;60;2026-04-30;90\n'],
    ['with tabs', 'batch\tvariant\tgood\tdue\tchance\nSpring\tAsh, copper\t60\t2026-04-30\t90\n'],
    [
      'with a line that names the sign between',
      'sep=;\nbatch;variant;good;due;chance\nSpring;Ash, copper;60;2026-04-30;90',
    ],
    [
      'headed by the words of the table',
      plain.replace('batch,variant,good,due,chance', 'Batch,VARIANT,Good ones wanted,Due,"Chance, per cent"'),
    ],
    ['in UTF-16, the small end first', utf16(plain, true)],
    ['in UTF-16, the large end first', utf16(plain, false)],
  ])('%s', (_, text) => {
    expect(linesOf(text)).toMatchObject([{ line: 2, ...spring, broken: undefined }]);
  });

  test('in whatever order its columns stand, and without those of the batch', () => {
    expect(linesOf('good,price,variant,batch\n60,12,"Ash, copper",Spring')).toMatchObject([
      { ...spring, due: '', chance: '' },
    ]);
    const read = readTargets(bytesOf('good,price,variant,batch\n60,12,a,b'));
    expect(read).toMatchObject({ kind: 'lines', unused: ['price'] });
  });

  test('from an old spreadsheet in Windows-1252', () => {
    const bytes = bytesOf('batch,variant,good\nFrXhling,x,1').map((byte) => (byte === 0x58 ? 0xfc : byte));
    expect(linesOf(bytes)).toMatchObject([{ batch: 'Frühling' }]);
  });

  test('with quotes and line ends inside a cell, and without the guard against formulas', () => {
    const text = `batch,variant,good\n"The ""fair""\nof spring",'=SUM(A1),1\n`;
    expect(linesOf(text)).toMatchObject([{ batch: 'The "fair"\nof spring', variant: '=SUM(A1)' }]);
  });
});

test('blank lines are passed over, and every line keeps its number', () => {
  const lines = linesOf('batch,variant,good\n\n,,\nSpring,x,1\n  \nSpring,y,2\n\n');
  expect(lines.map(({ line, variant }) => [line, variant])).toEqual([
    [4, 'x'],
    [6, 'y'],
  ]);
});

test('a line with more cells than headings, and one whose quote stays open, are broken and not dropped', () => {
  const lines = linesOf('batch,variant,good\nSpring,Ash, copper,60\nSpring,"y,2\nSpring,z,3\n');
  expect(lines.map(({ line, broken }) => [line, broken])).toEqual([
    [2, 'too-many-cells'],
    [3, 'quote'],
  ]);
});

test.each([
  ['nothing', '', { kind: 'empty' }],
  ['a byte order mark alone', '\ufeff', { kind: 'empty' }],
  ['no headings', 'Spring,Ash,60', { kind: 'no-column', column: 'batch' }],
  ['no numbers', 'batch,variant\nSpring,Ash', { kind: 'no-column', column: 'good' }],
  ['a column twice', 'batch,variant,good,Good\nSpring,Ash,1,2', { kind: 'column-twice', column: 'good' }],
])('a file with %s is refused as a whole', (_, text, expected) => {
  expect(readTargets(bytesOf(text))).toEqual(expected);
});

test('bytes that are no text at all are refused or broken, and never fail', () => {
  const noise = Uint8Array.from({ length: 5000 }, (_, at) => (at * 7919) % 256);
  expect(['empty', 'no-column', 'column-twice']).toContain(readTargets(noise).kind);
});

test('ten thousand lines are read, and more than the most are refused', () => {
  const file = (lines: number) => `batch,variant,good\n${'Spring,x,1\n'.repeat(lines)}`;
  expect(linesOf(file(10_000))).toHaveLength(10_000);
  expect(linesOf(file(mostLines))).toHaveLength(mostLines);
  expect(readTargets(bytesOf(file(mostLines + 2)))).toEqual({ kind: 'too-many-lines' });
  expect(readTargets(new Uint8Array(4_000_001))).toEqual({ kind: 'too-large' });
});
