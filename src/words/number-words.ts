import { locale } from './locale.ts';

const whole = new Intl.NumberFormat(locale, { maximumFractionDigits: 0 });

export function wholeNumber(n: number): string {
  return whole.format(n);
}
