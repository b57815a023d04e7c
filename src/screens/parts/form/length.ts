const plainLength = /^(\d+([.,]\d{0,2})?|[.,]\d{1,2})\s*(mm)?$/i;

/** A typed length in mm as hundredths of a millimetre; null when it is none, or out of bounds (1/100 mm). */
export function readLength(
  typed: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | null {
  const text = typed.trim();
  if (!plainLength.test(text)) return null;
  const length = Math.round(Number.parseFloat(text.replace(',', '.')) * 100);
  return length >= least && length <= most ? length : null;
}

/** Hundredths of a millimetre as they are typed: "12.5". */
export function lengthText(hundredths: number): string {
  return String(hundredths / 100);
}
