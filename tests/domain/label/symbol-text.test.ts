import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shopSign } from '../../../src/domain/label/shop-sign.ts';
import { readSymbol, symbolText } from '../../../src/domain/label/symbol-text.ts';
import { codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { trayCode } from '../../../src/domain/tray/tray-code.ts';

const sign = shopSign([1, 5, 11, 12]);
const anyContent = fc.record({
  code: fc
    .tuple(fc.constantFrom(...codeLetters), fc.integer({ min: 1, max: 99_999 }))
    .map(([letter, n]) => trayCode(letter, n)),
  sign: fc.array(fc.nat(255), { minLength: 4, maxLength: 4 }).map(shopSign),
});

describe('the text of a symbol', () => {
  test('is the code of the tray, then the sign of the shop', () => {
    expect(symbolText({ code: trayCode('A', 17), sign })).toMatch(/^A17[A-Z]-CJWX$/);
  });

  test('is read back as what it was made of, whatever a scanner does to blanks and small letters', () => {
    fc.assert(
      fc.property(anyContent, fc.constantFrom('', ' ', '\r\n'), fc.boolean(), (content, around, small) => {
        const text = `${around}${symbolText(content)}${around}`;
        expect(readSymbol(small ? text.toLowerCase() : text)).toEqual({ kind: 'tray', ...content });
      }),
    );
  });

  // ISO/IEC 18004:2015, table 5 (from memory): the 45 signs of alphanumeric mode.
  test('lies in the alphanumeric set of the standard', () => {
    fc.assert(fc.property(anyContent, (content) => /^[0-9A-Z $%*+\-./:]+$/.test(symbolText(content))));
  });

  test('with one wrong character of its code is damaged, not another tray', () => {
    fc.assert(
      fc.property(
        anyContent,
        fc.nat(),
        fc.constantFrom(...codeLetters, ...'0123456789'),
        (content, n, to) => {
          const place = n % content.code.length;
          fc.pre(content.code[place] !== to);
          const wrong = content.code.slice(0, place) + to + content.code.slice(place + 1);
          expect(readSymbol(`${wrong}-${content.sign}`).kind).not.toBe('tray');
        },
      ),
    );
  });

  test.each(['A17R-CKW', 'A17R-CKW0', 'A17A-CJWX'])('%s is damaged', (text) =>
    expect(readSymbol(text)).toEqual({ kind: 'damaged' }),
  );

  test.each([
    '',
    '-',
    'https://example.org/A17R-CJWX',
    '5901234123457',
    'A17R',
    'WIFI:T:WPA;S:shop;;',
    'A17R-CJWX-CJWX',
  ])('"%s" is foreign', (text) => expect(readSymbol(text)).toEqual({ kind: 'foreign' }));
});
