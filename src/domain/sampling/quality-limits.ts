/**
 * The acceptance quality limits (AQL) that a plan can be had for, in per cent nonconforming: the worst share of bad ones that
 * is good enough on average of many deliveries.
 */
export const qualityLimits = ['0.65', '1', '1.5', '2.5', '4', '6.5', '10'] as const;
export type QualityLimit = (typeof qualityLimits)[number];
