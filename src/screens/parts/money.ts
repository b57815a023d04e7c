/** A sum as a person types it: digits, decimals after a point or comma, a sign of money or none. */
const sum = /^\p{Sc}?\s*(\d{1,7})(?:[.,](\d{1,4}))?\s*\p{Sc}?$/u;

/** What is typed in units of its last decimal place; null when nothing is typed, undefined when it is no such sum. */
function readSum(typed: string, places: number): number | null | undefined {
  const text = typed.trim();
  if (text === '') return null;
  const [, whole, decimals = ''] = sum.exec(text) ?? [];
  if (whole === undefined || decimals.length > places) return undefined;
  return Number(whole) * 10 ** places + Number(decimals.padEnd(places, '0'));
}

/** What a typed price, with at most two decimals, amounts to in whole minor units. */
export function readPrice(typed: string): number | null | undefined {
  return readSum(typed, 2);
}

/** A price as it is typed: "24.50"; empty when it is not known. */
export function priceText(minor: number | null): string {
  return minor === null ? '' : (minor / 100).toFixed(2);
}

/** What a typed cost of one piece, with at most four decimals, amounts to in whole hundredths of a minor unit. */
export function readPieceCost(typed: string): number | null | undefined {
  return readSum(typed, 4);
}

/** A cost of one piece as it is typed: "0.85", "0.0084"; empty when it is not known. */
export function pieceCostText(hundredths: number | null): string {
  return hundredths === null ? '' : (hundredths / 10_000).toFixed(4).replace(/0{1,2}$/, '');
}
