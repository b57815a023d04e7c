import { codeLetters } from '../tray/code-alphabet.ts';
import { parseTrayCode } from '../tray/tray-code.ts';

const letter = `[${codeLetters}]`;
/** A scanner and a tablet that differ in their layout of keys agree on letters and digits, and not on the hyphen. */
const between = '[^A-Z0-9]';
const begun = new RegExp(`^${letter}([1-9]([0-9]{0,4}(${letter}(${between}${letter}{0,4})?)?)?)?$`, 'i');
const whole = new RegExp(`^${letter}[1-9][0-9]{0,4}${letter}${between}${letter}{4}$`, 'i');

/** Whether typed signs are the beginning of a label's text, or all of it. */
export function mayBecomeLabel(typed: string): boolean {
  return begun.test(typed);
}

/** The text of a label that was typed: with its sign, or the bare code, which must add up. Undefined while it is neither. */
export function typedLabel(
  typed: string,
): { readonly text: string; readonly kind: 'label' | 'code' } | undefined {
  const text = typed.replace(new RegExp(between, 'i'), '-').toUpperCase();
  if (whole.test(typed)) return { text, kind: 'label' };
  return parseTrayCode(typed) === text ? { text, kind: 'code' } : undefined;
}
