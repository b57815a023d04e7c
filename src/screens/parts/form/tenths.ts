/** A typed number of at most one decimal as whole tenths; null when it is none, or out of bounds (tenths). */
export function readTenths(
  typed: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | null {
  const text = typed.trim().replace('−', '-').replace(',', '.');
  if (!/^-?\d+(\.\d?)?$/.test(text)) return null;
  const tenths = Math.round(Number(text) * 10);
  return tenths >= least && tenths <= most ? tenths : null;
}
