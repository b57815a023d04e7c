import * as v from 'valibot';
import { codeLetters } from '../tray/code-alphabet.ts';
import { parseTrayCode, type TrayCode } from '../tray/tray-code.ts';
import { type ShopSign, shopSignSchema } from './shop-sign.ts';

/** What the symbol on a label says: the code of a tray and the sign of its shop. */
export interface SymbolContent {
  readonly code: TrayCode;
  readonly sign: ShopSign;
}

/**
 * The text of a label's QR symbol, for instance `A17R-CKWX`: any reader shows it, and all of it lies in the alphanumeric
 * set of ISO/IEC 18004, so that the smallest symbol holds it with room for error correction.
 */
export function symbolText({ code, sign }: SymbolContent): string {
  return `${code}-${sign}`;
}

/** What comes of reading a symbol. */
export type SymbolReading =
  | ({ readonly kind: 'tray' } & SymbolContent)
  /** A label of this kind, but not as it was printed: its code fails its check letter, or a sign is wrong. */
  | { readonly kind: 'damaged' }
  /** Anything else that a symbol can say. */
  | { readonly kind: 'foreign' };

/** As long as a label's text can be, and shaped like it: what misses here was never ours. */
const looksLikeOurs = new RegExp(`^[${codeLetters}][A-Z0-9]{2,6}-[A-Z0-9]{3,5}$`);

/** Reads the text that a decoder or a wedge scanner gives; blanks around it and small letters are put right. */
export function readSymbol(text: string): SymbolReading {
  const tidy = text.trim().toUpperCase();
  const [before = '', after = ''] = tidy.split('-');
  const code = parseTrayCode(before);
  const sign = v.safeParse(shopSignSchema, after);
  if (code !== undefined && sign.success && tidy === symbolText({ code, sign: sign.output }))
    return { kind: 'tray', code, sign: sign.output };
  return { kind: looksLikeOurs.test(tidy) ? 'damaged' : 'foreign' };
}
