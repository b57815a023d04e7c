import { traysOfCode } from '../rollup/same-code.ts';
import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';
import { parseTrayCode, type TrayCode } from '../tray/tray-code.ts';
import { signOf } from './sign-of.ts';
import { readSymbol } from './symbol-text.ts';

/** What a scanned text leads to. */
export type Labelled =
  | { readonly kind: 'tray'; readonly tray: TrayRecord }
  /** Several trays in work carry the code: two tablets had one letter before they knew of each other. */
  | { readonly kind: 'alike'; readonly code: TrayCode }
  /** A code of this shop whose tray is not in its log. */
  | { readonly kind: 'not-here'; readonly code: TrayCode }
  | { readonly kind: 'other-shop'; readonly code: TrayCode }
  | { readonly kind: 'damaged' }
  | { readonly kind: 'foreign' };

/** Finds the tray of a label by its text; a code without a sign, as a person would write it, is taken for one of this shop. */
export function findLabelled(shop: Shop, text: string): Labelled {
  const bare = parseTrayCode(text);
  const sign = signOf(shop.registers);
  const reading = bare ? ({ kind: 'tray', code: bare, sign } as const) : readSymbol(text);
  if (reading.kind !== 'tray') return reading;
  if (reading.sign !== sign) return { kind: 'other-shop', code: reading.code };
  const [tray, other] = traysOfCode(shop, reading.code);
  if (other && shop.positions.working.has(other.tray)) return { kind: 'alike', code: reading.code };
  return tray ? { kind: 'tray', tray } : { kind: 'not-here', code: reading.code };
}
