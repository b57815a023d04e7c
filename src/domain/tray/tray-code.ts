import * as v from 'valibot';
import { checkCharacters, type PureSystem } from './check-character.ts';
import { codeDigits, codeLetters } from './code-alphabet.ts';

const value = new Map(
  [...[...codeLetters].entries(), ...[...codeDigits].entries()].map(([index, sign]) => [sign, index]),
);

/**
 * Modulo 13 (prime) with radix 2, which generates all of 1 to 12, so that neither a wrong character nor a swap
 * of characters up to eleven places apart goes unseen. A letter and a digit may share a value: the form of a
 * code (letter, digits, letter) tells them apart.
 */
export const traySystem: PureSystem = {
  modulus: 13,
  radix: 2,
  length: 1,
  valueOf: (character) => value.get(character),
  checks: codeLetters,
};

const form = new RegExp(`^[${codeLetters}][1-9][0-9]{0,4}[${codeLetters}]$`);
/** Longest code: a letter, five digits, a check letter. */
export const longestCode = 7;

const trayCodeSchema = v.pipe(v.string(), v.check(isTrayCode), v.brand('TrayCode'));
/** Short code of a tray: station letter, running number, check letter, for instance A17R. */
export type TrayCode = v.InferOutput<typeof trayCodeSchema>;

function isTrayCode(text: string): boolean {
  return form.test(text) && checkCharacters(text.slice(0, -1), traySystem) === text.at(-1);
}

/** Capitals, without the blanks, dots and hyphens that people put between groups. */
export function tidyCode(typed: string): string {
  return typed.toUpperCase().replace(/[\s.\-–]/g, '');
}

/** The code that was typed, or undefined when it is none. */
export function parseTrayCode(typed: string): TrayCode | undefined {
  const result = v.safeParse(trayCodeSchema, tidyCode(typed));
  return result.success ? result.output : undefined;
}

/** The code of a station's n-th tray; n from 1 to 99,999. Throws RangeError outside of that. */
export function trayCode(letter: string, n: number): TrayCode {
  const body = `${letter}${n}`;
  const code = parseTrayCode(body + checkCharacters(body, traySystem));
  if (code === undefined) throw new RangeError(`no tray code for ${letter} and ${n}`);
  return code;
}

/** The running number within a code. */
export function numberOfCode(code: TrayCode): number {
  return Number(code.slice(1, -1));
}
