import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/check-characters.json' with { type: 'json' };
import { checkCharacters, hasValidCheck, type PureSystem } from '../../../src/domain/tray/check-character.ts';

const digits = '0123456789';
const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

type Signs = Pick<PureSystem, 'modulus' | 'radix' | 'length'> & {
  readonly body: string;
  readonly checks?: string;
};

function system({ body, checks = body, ...numbers }: Signs): PureSystem {
  const values = new Map([...body].map((character, value) => [character, value]));
  return { ...numbers, checks, valueOf: (character) => values.get(character) };
}

const mod11 = system({ modulus: 11, radix: 2, length: 1, body: digits, checks: `${digits}X` });
const mod97 = system({ modulus: 97, radix: 10, length: 2, body: digits });
const mod661 = system({ modulus: 661, radix: 26, length: 2, body: letters });
const mod1271 = system({ modulus: 1271, radix: 36, length: 2, body: digits + letters });

/** Letters as numbers from 10 on, as ISO 13616 and ISO 17442 write them before the check. */
const lettersAsNumbers = (text: string) =>
  text.replace(/[A-Z]/g, (letter) => `${letters.indexOf(letter) + 10}`);
/** An IBAN with its country and check digits at the end, where MOD 97-10 wants them. */
const ibanInOrder = (iban: string) => lettersAsNumbers(iban.slice(4) + iban.slice(0, 4));

describe('the routine of the tray codes, with other numbers, gives the published check characters', () => {
  const { 'chk-112': isni, 'chk-9710': pairs, 'chk-others': others } = cases;

  test.each(isni.inputs.bodies.map((body, index) => [body, isni.expected.check[index]]))(
    'ISO/IEC 7064 MOD 11-2: %s ends in %s',
    (body, check) => {
      expect(checkCharacters(`${body}`, mod11)).toBe(check);
    },
  );

  test.each(pairs.inputs.body_pairs.map((body, index) => [body, pairs.expected.check_pairs[index]]))(
    'ISO/IEC 7064 MOD 97-10: %s ends in %s',
    (body, check) => {
      expect(checkCharacters(`${body}`, mod97)).toBe(check);
      expect(hasValidCheck(`${body}${check}`, mod97)).toBe(true);
    },
  );

  test.each(pairs.inputs.validate)('a legal entity identifier of ISO 17442 is valid: %s', (lei) => {
    expect(hasValidCheck(lettersAsNumbers(lei), mod97)).toBe(true);
  });

  test.each(pairs.inputs.iban)('an account number of ISO 13616 is valid: %s', (iban) => {
    expect(hasValidCheck(ibanInOrder(iban), mod97)).toBe(true);
  });

  test('ISO/IEC 7064 MOD 661-26 and MOD 1271-36', () => {
    expect(checkCharacters(others.inputs.mod661_26, mod661)).toBe(others.expected.mod661_26);
    expect(checkCharacters(others.inputs.mod1271_36, mod1271)).toBe(others.expected.mod1271_36);
  });
});

test('a character that the system does not know has no check character', () => {
  expect(checkCharacters('07-94', mod11)).toBeUndefined();
});

test('a wrong digit and a swap of two neighbours are seen by all systems', () => {
  expect(hasValidCheck('07940', mod11)).toBe(true);
  expect(hasValidCheck('07840', mod11)).toBe(false);
  expect(hasValidCheck('07490', mod11)).toBe(false);
  expect(hasValidCheck('79444', mod97)).toBe(true);
  expect(hasValidCheck('74944', mod97)).toBe(false);
  expect(hasValidCheck('IS7O93W', mod1271)).toBe(false);
});

test('check characters alone are no number', () => {
  expect(hasValidCheck('1', mod11)).toBe(false);
  expect(hasValidCheck('01', mod97)).toBe(false);
  expect(hasValidCheck('', mod97)).toBe(false);
});
