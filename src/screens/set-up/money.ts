/** What a typed price amounts to in whole minor units; null when nothing is typed, undefined when it is none. */
export function readPrice(typed: string): number | null | undefined {
  const text = typed.trim().replace(',', '.');
  if (text === '') return null;
  if (!/^\d{1,7}(\.\d{1,2})?$/.test(text)) return undefined;
  return Math.round(Number(text) * 100);
}

/** A price as it is typed: "24.50"; empty when it is not known. */
export function priceText(minor: number | null): string {
  return minor === null ? '' : (minor / 100).toFixed(2);
}
