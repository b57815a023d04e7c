/** "1 piece", "7 pieces". */
export function pieces(n: number): string {
  return n === 1 ? '1 piece' : `${wholeNumber(n)} pieces`;
}

/** "1 good one", "7 good ones". */
export function goodOnes(n: number): string {
  return n === 1 ? '1 good one' : `${wholeNumber(n)} good ones`;
}

const whole = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 0 });
const tenths = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });
const percent = new Intl.NumberFormat('en-GB', { style: 'percent', maximumFractionDigits: 1 });

export function wholeNumber(n: number): string {
  return whole.format(n);
}

/** At most one decimal place. */
export function roundNumber(n: number): string {
  return tenths.format(n);
}

/** A share as per cent with at most one decimal; a dash while it is not yet known. */
export function share(value: number | null): string {
  return value === null ? '–' : percent.format(value);
}
