/** Hours with or without decimals, after a point or comma; null when it is no such number. */
export function readHours(typed: string): number | null {
  const text = typed.trim().replace(',', '.') || '0';
  return /^(\d+(\.\d*)?|\.\d+)$/.test(text) ? Number(text) : null;
}

/** Typed hours as whole minutes within bounds; null when they are none. */
export function readMinutes(typed: string, most: number): number | null {
  const hours = readHours(typed);
  if (hours === null) return null;
  const minutes = Math.round(hours * 60);
  return minutes >= 1 && minutes <= most ? minutes : null;
}

/** Whole minutes as hours that are read back to the same: "1.6667". */
export function hoursText(minutes: number): string {
  return String(Number((minutes / 60).toFixed(4)));
}
