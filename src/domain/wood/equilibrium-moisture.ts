/** The air of a room. */
export interface Climate {
  /** Degrees Celsius. */
  readonly celsius: number;
  /** Relative humidity in per cent, 0 to 100. */
  readonly humidity: number;
}

/** Air for which the Wood Handbook's table stands and that a shop or a drying box can have: 30 to 200 °F, 5 to 95 %. */
export const climateBounds = {
  celsius: { least: (30 - 32) / 1.8, most: (200 - 32) / 1.8 },
  humidity: { least: 5, most: 95 },
} as const;

export type Equilibrium =
  | { readonly kind: 'known' /** Per cent of the oven-dry weight. */; readonly percent: number }
  | { readonly kind: 'out-of-range'; readonly which: keyof Climate };

/**
 * The moisture content that wood comes to in air of this climate, whatever its species, in per cent of its oven-dry weight.
 * Real woods lie a per cent or so to either side, and wood that dries stays above wood that takes up.
 *
 * The two-hydrate equation of Hailwood and Horrobin with the constants of the Wood Handbook: USDA Forest Products
 * Laboratory, FPL-GTR-190 (2010), chapter 4, equation 4-5, in °C.
 */
export function equilibriumMoistureContent({ celsius, humidity }: Climate): Equilibrium {
  if (!isWithin(celsius, climateBounds.celsius)) return { kind: 'out-of-range', which: 'celsius' };
  if (!isWithin(humidity, climateBounds.humidity)) return { kind: 'out-of-range', which: 'humidity' };
  return { kind: 'known', percent: hailwoodHorrobin(celsius, humidity / 100) };
}

function isWithin(value: number, { least, most }: { least: number; most: number }): boolean {
  return value >= least && value <= most;
}

function hailwoodHorrobin(t: number, h: number): number {
  const w = 349 + 1.29 * t + 0.0135 * t ** 2;
  const kh = (0.805 + 0.000736 * t - 0.00000273 * t ** 2) * h;
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t ** 2;
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t ** 2;
  const dissolved = kh / (1 - kh);
  const hydrated = (k1 * kh + 2 * k1 * k2 * kh ** 2) / (1 + k1 * kh + k1 * k2 * kh ** 2);
  return (1800 / w) * (dissolved + hydrated);
}
