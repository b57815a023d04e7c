/** One figure of many simulated shops, and the band that it has to lie in. */
export interface CalibrationRow {
  readonly id: string;
  /** What was simulated, and what the figure is. */
  readonly what: string;
  /** In the file null for infinite. */
  readonly value: number;
  /** Both ends may be reached; null for a figure that is there to be seen. */
  readonly band: readonly [low: number, high: number] | null;
  readonly ok: boolean;
  readonly shops: number;
}

/** A figure that cannot be computed lies in no band; one that is there to be seen may be infinite: it never came to that. */
export function calibrationRow({ value, band, ...row }: Omit<CalibrationRow, 'ok'>): CalibrationRow {
  const ok = band === null ? !Number.isNaN(value) : value >= band[0] && value <= band[1];
  return { ...row, value, band, ok };
}

export interface Simulation {
  readonly seed: number;
  /** How many shops each figure is of. */
  readonly shops: number;
}

export function meanOf(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}

/** The value below which `share` (0 to 1) of the values lie, by the nearest rank; infinite where values are. */
export function quantileOf(values: readonly number[], share: number): number {
  const at = Math.max(0, Math.ceil(share * values.length) - 1);
  return values.toSorted((a, b) => a - b)[at] ?? Number.NaN;
}
