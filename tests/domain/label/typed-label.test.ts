import fc from 'fast-check';
import { expect, test } from 'vitest';
import { shopSign } from '../../../src/domain/label/shop-sign.ts';
import { symbolText } from '../../../src/domain/label/symbol-text.ts';
import { mayBecomeLabel, typedLabel } from '../../../src/domain/label/typed-label.ts';
import { codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { trayCode } from '../../../src/domain/tray/tray-code.ts';

const anyText = fc
  .tuple(
    fc.constantFrom(...codeLetters),
    fc.integer({ min: 1, max: 99_999 }),
    fc.array(fc.nat(255), { minLength: 4, maxLength: 4 }),
  )
  .map(([letter, n, numbers]) => symbolText({ code: trayCode(letter, n), sign: shopSign(numbers) }));

test('each beginning of a label’s text may become one, in small letters and with another hyphen too', () => {
  fc.assert(
    fc.property(anyText, fc.constantFrom('-', 'ß', '/', "'"), fc.boolean(), (text, hyphen, small) => {
      const written = text.replace('-', hyphen);
      const typed = small ? written.toLowerCase() : written;
      for (let length = 1; length <= typed.length; length += 1)
        expect(mayBecomeLabel(typed.slice(0, length))).toBe(true);
      expect(typedLabel(typed)).toEqual({ text, kind: 'label' });
      expect(mayBecomeLabel(`${typed}A`)).toBe(false);
    }),
  );
});

test.each(['', '1', 'B', 'AA', 'A0', 'A17-', 'A123456', 'A17TT', 'A17T-CKWXA', 'A17T-CK1X', ' A', 'https'])(
  '%j is the beginning of no label',
  (typed) => {
    expect(mayBecomeLabel(typed)).toBe(false);
    expect(typedLabel(typed)).toBeUndefined();
  },
);

test('a bare code must add up; a label with its sign is told by its form, and judged when it is read', () => {
  expect(typedLabel(trayCode('A', 17))).toEqual({ text: trayCode('A', 17), kind: 'code' });
  expect(typedLabel('A17A')).toBeUndefined();
  expect(typedLabel('A17A-CKWX')).toEqual({ text: 'A17A-CKWX', kind: 'label' });
});
