/** The first moment that a zip file has a form for, and the last (PKWARE APPNOTE 4.4.6). */
const [earliest, latest] = [Date.UTC(1980, 0, 2), Date.UTC(2107, 11, 30)];

/** A moment (ms UTC) as near as a zip file can say it. */
export function zipMoment(at: number): number {
  return Math.min(latest, Math.max(earliest, at));
}
