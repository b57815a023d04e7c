/** How hot a share is: 0 for nothing, else 1 to 5 in steps of a fifth of the most. */
export const heatOf = (share: number, most: number): number =>
  share > 0 && most > 0 ? Math.min(5, Math.ceil((5 * share) / most)) : 0;
