const plainNumber = /^(\d+([.,]\d{0,2})?|[.,]\d{1,2})$/;

/** A typed number of at most two decimals as whole hundredths; null when it is none, or out of bounds (hundredths). */
export function readHundredths(
  typed: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | null {
  const text = typed.trim();
  if (!plainNumber.test(text)) return null;
  const read = Math.round(Number.parseFloat(text.replace(',', '.')) * 100);
  return read >= least && read <= most ? read : null;
}

/** Hundredths as they are typed: "1.5". */
export function hundredthsText(hundredths: number): string {
  return String(hundredths / 100);
}
