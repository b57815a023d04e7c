import { type FittedChange, fittedDiameterChange, type Shrinkage } from './dimension-change.ts';

/**
 * The gap at a ferrule that a fit forgives, in hundredths of a millimetre all round the diameter. Common practice, no
 * source: a film of slow adhesive bridges it, and a nail finds no edge.
 */
export const forgivenGap = 5;

/** What may be said of wood before a metal part is fitted to it. */
export type Readiness =
  | { readonly kind: 'ready' /** 1/100 mm, 0 or more. */; readonly gap: number }
  | { readonly kind: 'too-wet' /** The gap to be expected, 1/100 mm. */; readonly gap: number }
  /** It will take up water and grow in its ferrule, by so many 1/100 mm: no gap, but strain on wood and ring. */
  | { readonly kind: 'too-dry'; readonly growth: number }
  /** The table has no shrinkage of this wood. */
  | { readonly kind: 'not-known' }
  | { readonly kind: 'out-of-range'; readonly which: 'from' | 'to' };

/**
 * Whether a wood may be turned to a fitted diameter now. It is judged by the direction that moves most: a gap shows where it
 * is widest. Metal does not move with the air, so what the wood loses in diameter is the gap.
 *
 * @param fit.diameter the fitted diameter, 1/100 mm.
 * @param fit.from moisture content of the wood now, per cent; `to`, what it will come to where it is used.
 * @param fit.forgiven gap or growth that is let pass, 1/100 mm; `forgivenGap` when left out.
 */
export function readyToFit({
  forgiven = forgivenGap,
  ...fit
}: {
  readonly diameter: number;
  readonly shrinkage: Shrinkage;
  readonly from: number;
  readonly to: number;
  readonly forgiven?: number | undefined;
}): Readiness {
  const change = fittedDiameterChange(fit);
  if (change.kind !== 'known') return change;
  const most = largest(change);
  if (most > forgiven) return { kind: 'too-dry', growth: most };
  const gap = Math.max(0, -most);
  return { kind: gap > forgiven ? 'too-wet' : 'ready', gap };
}

function largest({ tangential, radial }: Extract<FittedChange, { kind: 'known' }>): number {
  return Math.abs(radial) > Math.abs(tangential) ? radial : tangential;
}
