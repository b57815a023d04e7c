import { expect, test } from 'vitest';
import { copyInText, textOfCopy, unwrapped } from '../../src/app/text-copy.ts';

const bytes = (length: number) => Uint8Array.from({ length }, (_, index) => (index * 7 + 3) % 256);

test('a copy carried as text is the same file again, whatever its length', () => {
  for (const length of [0, 1, 2, 3, 47, 48, 49, 12_287, 12_288, 12_289, 40_000]) {
    expect(copyInText(textOfCopy(bytes(length)))).toEqual(bytes(length));
  }
});

test('the text agrees with base64 as Node writes it (RFC 4648), in lines of 64 signs (RFC 7468)', () => {
  const [first, ...lines] = textOfCopy(bytes(1000)).trimEnd().split('\n');
  const last = lines.pop();
  expect([first, last]).toEqual(['-----BEGIN TALLYWRIGHT COPY-----', '-----END TALLYWRIGHT COPY-----']);
  expect(lines.join('')).toBe(Buffer.from(bytes(1000)).toString('base64'));
  expect(Math.max(...lines.map((line) => line.length))).toBe(64);
});

test('mail that quotes, indents or breaks the lines does no harm', () => {
  const text = textOfCopy(bytes(500));
  const quoted = `Hello,\r\n\r\n${text.replace(/^/gm, '> ').replaceAll('\n', '\r\n')}\r\nYours`;
  expect(copyInText(quoted)).toEqual(bytes(500));
  expect(copyInText(text.replace(/(.{10})/g, '$1 '))).toBeUndefined();
  expect(copyInText(text.replace(/^([^-]{10})/gm, '$1 \t'))).toEqual(bytes(500));
});

test('of a text that was cut the beginning is there', () => {
  const text = textOfCopy(bytes(500));
  for (let length = 33; length < text.length; length += 1) {
    const part = copyInText(text.slice(0, length));
    expect(bytes(500).subarray(0, part?.length)).toEqual(part);
  }
});

test('a text file that holds a copy is unwrapped; any other file is left as it is', async () => {
  const text = new Blob([`\ufeff${textOfCopy(bytes(90))}`]);
  expect(new Uint8Array(await (await unwrapped(text)).arrayBuffer())).toEqual(bytes(90));
  const other = new Blob([bytes(90)]);
  expect(await unwrapped(other)).toBe(other);
  expect(copyInText('a shopping list')).toBeUndefined();
});
