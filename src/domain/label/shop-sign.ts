import * as v from 'valibot';
import { codeLetters } from '../tray/code-alphabet.ts';

const signLength = 4;

/**
 * Short id of a shop on its labels: four letters of the tray codes' alphabet. It tells a tray of this shop from one of
 * another (13⁴ = 28,561 signs); it is no secret.
 */
export const shopSignSchema = v.pipe(
  v.string(),
  v.regex(new RegExp(`^[${codeLetters}]{${signLength}}$`)),
  v.brand('ShopSign'),
);
export type ShopSign = v.InferOutput<typeof shopSignSchema>;

/** The sign that `numbers` (whole, at least four of them) stand for; bytes of an id or of chance. */
export function shopSign(numbers: readonly number[]): ShopSign {
  const letters = numbers.slice(0, signLength).map((n) => codeLetters.charAt(n % codeLetters.length));
  return v.parse(shopSignSchema, letters.join(''));
}
