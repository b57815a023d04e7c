/**
 * Diameter in inches times turns per minute, between which turners keep. Common practice of woodturning clubs, no standard;
 * as speed of the surface it is 8 to 12 m/s.
 */
const usualProduct = { low: 6000, high: 9000 };
const inch = 25.4;

/**
 * Length over diameter from which a piece between centres whips: support it, and turn it slowly. Common practice, no source.
 */
const slender = 10;

/** What a lathe of a small shop can hold. A diameter beyond it is a slip of the finger. */
export const turnedBounds = { least: 3, most: 1000 } as const;

export type LatheSpeeds =
  | {
      readonly kind: 'known';
      /** Turns per minute. `low` is where to begin. */
      readonly low: number;
      readonly high: number;
      /** Speed of the surface at them, m/s. */
      readonly lowSurface: number;
      readonly highSurface: number;
      /** The machine's own limit lies below what is usual, and both ends are held to it. */
      readonly isLimited: boolean;
      /** So slender that it needs a steady rest; `high` is no more than `low` then. */
      readonly needsSteady: boolean;
    }
  | { readonly kind: 'out-of-range'; readonly which: 'diameter' | 'length' | 'limit' };

/**
 * The speeds at which a sound, round, centred piece of wood is usually turned; a rough or unbalanced one is begun at the
 * machine's slowest. Diameter and length are millimetres, of the thickest part; `limit` is the machine's (or chuck's) own
 * most turns per minute, which comes first.
 */
export function latheSpeedRange({
  diameter,
  length,
  limit = null,
}: {
  readonly diameter: number;
  readonly length: number | null;
  readonly limit?: number | null | undefined;
}): LatheSpeeds {
  const { least, most } = turnedBounds;
  if (!(diameter >= least && diameter <= most)) return { kind: 'out-of-range', which: 'diameter' };
  if (length !== null && !(length > 0 && length <= 5 * most))
    return { kind: 'out-of-range', which: 'length' };
  if (limit !== null && !(limit > 0 && limit < 100_000)) return { kind: 'out-of-range', which: 'limit' };
  const needsSteady = length !== null && length / diameter > slender;
  const usualLow = (usualProduct.low * inch) / diameter;
  const usualHigh = needsSteady ? usualLow : (usualProduct.high * inch) / diameter;
  const bound = limit ?? Number.POSITIVE_INFINITY;
  const [low, high] = [Math.min(usualLow, bound), Math.min(usualHigh, bound)];
  return {
    kind: 'known',
    ...{ low, high },
    lowSurface: surfaceSpeed({ diameter, turns: low }),
    highSurface: surfaceSpeed({ diameter, turns: high }),
    isLimited: usualHigh > bound,
    needsSteady,
  };
}

/** Metres per second of the surface of a piece, of a diameter in millimetres, at so many turns per minute: π d n ÷ 60. */
export function surfaceSpeed({
  diameter,
  turns,
}: {
  readonly diameter: number;
  readonly turns: number;
}): number {
  return (Math.PI * (diameter / 1000) * turns) / 60;
}
