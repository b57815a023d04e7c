/**
 * Pure check-character systems in the manner of ISO/IEC 7064:2003 (MOD 11-2, 37-2, 97-10, 661-26, 1271-36):
 * a string is valid when the sum of its character values times powers of the radix is 1 modulo the modulus.
 * With a prime modulus no smaller than the alphabet, every wrong character and every swap of two neighbours
 * is caught.
 */
export interface PureSystem {
  readonly modulus: number;
  readonly radix: number;
  /** How many check characters end a string: 1 or 2. */
  readonly length: 1 | 2;
  /** Value of a character of the body; undefined when it is none. */
  readonly valueOf: (character: string) => number | undefined;
  /** Check characters by value, 0 first. */
  readonly checks: string;
}

/** The check characters of `body`, or undefined when a character of it is unknown to the system. */
export function checkCharacters(body: string, system: PureSystem): string | undefined {
  const { modulus, radix, length, checks } = system;
  let sum = 0;
  for (const character of body) {
    const value = system.valueOf(character);
    if (value === undefined) return undefined;
    sum = ((sum + value) * radix) % modulus;
  }
  // `sum` carries one factor of the radix, all that one check character needs; a second one needs one more.
  if (length === 1) return checks[(modulus + 1 - sum) % modulus];
  // Two characters hold values beyond the modulus; of two that would do, the standard takes the greater (98, not 01).
  const check = modulus + 1 - ((sum * radix) % modulus);
  const [high, low] = [checks[Math.floor(check / radix)], checks[check % radix]];
  return high === undefined || low === undefined ? undefined : high + low;
}

/** Whether `text` ends in the check characters of the rest. */
export function hasValidCheck(text: string, system: PureSystem): boolean {
  const body = text.slice(0, -system.length);
  return body !== '' && checkCharacters(body, system) === text.slice(-system.length);
}
