/** A price as a person types it: digits, at most two decimals after a point or comma, a sign of money or none. */
const price = /^\p{Sc}?\s*(\d{1,7})(?:[.,](\d{1,2}))?\s*\p{Sc}?$/u;

/** What a typed price amounts to in whole minor units; null when nothing is typed, undefined when it is none. */
export function readPrice(typed: string): number | null | undefined {
  const text = typed.trim();
  if (text === '') return null;
  const [, whole, decimals = ''] = price.exec(text) ?? [];
  return whole === undefined ? undefined : Number(whole) * 100 + Number(decimals.padEnd(2, '0'));
}

/** A price as it is typed: "24.50"; empty when it is not known. */
export function priceText(minor: number | null): string {
  return minor === null ? '' : (minor / 100).toFixed(2);
}
