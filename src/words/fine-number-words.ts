import { locale } from './locale.ts';
import { wholeNumber } from './number-words.ts';

const tenths = new Intl.NumberFormat(locale, { maximumFractionDigits: 1 });
const percent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 1 });
const wholePercent = new Intl.NumberFormat(locale, { style: 'percent', maximumFractionDigits: 0 });

/** At most one decimal place. */
export function roundNumber(n: number): string {
  return tenths.format(n);
}

/** With so many decimals, zeros among them: "12.50". A loss has a true minus sign. */
export function fixedNumber(n: number, decimals: number): string {
  const exact = new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: false,
  });
  return exact.format(n).replace('-', '−');
}

/** "+7", "−3": a change with its sign. */
export function signedNumber(n: number): string {
  return `${n > 0 ? '+' : ''}${wholeNumber(n)}`.replace('-', '−');
}

/** A sum of money of minor units (cents, pence) in the shop's currency, which has no sign of its own: "12.50". */
export function money(minor: number): string {
  return fixedNumber(Math.round(minor) / 100, 2);
}

/** A share as per cent with at most one decimal; a dash while it is not yet known. */
export function share(value: number | null): string {
  return value === null ? '–' : percent.format(value);
}

/** A share that is known about: a whole per cent. */
export function about(value: number): string {
  return wholePercent.format(value);
}
