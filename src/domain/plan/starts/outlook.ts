/** What is expected in the end of a number of pieces at some step, by that number from 0 on. */
export interface Outlook {
  /** Chance of fewer good ones than wanted. */
  readonly fewer: number[];
  /** Good ones that are then missing, on average. */
  readonly short: number[];
  /** From this number of pieces on both are nothing; Infinity while no such number is known. */
  enough: number;
}

export interface Expected {
  readonly fewer: number;
  readonly short: number;
}

export const newOutlook = (): Outlook => ({ fewer: [], short: [], enough: Number.POSITIVE_INFINITY });

/** Below it a chance is nothing: the sums of 1 that it would be taken from do not see it. */
const NOTHING = 1e-20;
/** Up to here every number of pieces has a sum of its own. */
const EACH = 1024;
/** Numbers in a block of whose sums the others follow, and how many of them are tried. */
const NODES = 9;
/** How near those that are tried must be, in chances and, for pieces, in shares of what is missing at most. */
const NEAR = 1e-10;

/**
 * Fills in what is expected up to a number of pieces, and to the end of its block. Beyond 1,024 pieces sums change so little from one
 * number to the next that a block is drawn as a polynomial through nine of its sums. Two others are held against it; where
 * one is off by more than 1e-10, each half of the block is drawn for itself.
 */
export function fillOutlook(
  outlook: Outlook,
  { upTo, sumOf }: { readonly upTo: number; readonly sumOf: (pieces: number) => Expected },
): void {
  while (outlook.fewer.length <= upTo) {
    const first = outlook.fewer.length;
    const last = blockEnd(first);
    if (first >= outlook.enough) append(outlook, { first, last, of: () => ({ fewer: 0, short: 0 }) });
    else if (first === last) append(outlook, { first, last, of: sumOf });
    else fillBlock(outlook, { first, last, sumOf: remembering(sumOf) });
    // More pieces never do worse, so from the first number that is enough there is nothing to sum.
    if ((outlook.fewer[last] ?? 0) < NOTHING) outlook.enough = Math.min(outlook.enough, last);
  }
}

/** The last number of pieces of the block that this one is in: eight blocks to each doubling. */
export function blockEnd(pieces: number): number {
  if (pieces < EACH) return pieces;
  const size = 2 ** (Math.floor(Math.log2(pieces)) - 3);
  return (Math.floor(pieces / size) + 1) * size - 1;
}

interface Block {
  readonly first: number;
  readonly last: number;
  readonly sumOf: (pieces: number) => Expected;
}

function fillBlock(outlook: Outlook, { first, last, sumOf }: Block): void {
  const drawn = last - first >= 2 * NODES ? drawnThrough({ first, last, sumOf }) : undefined;
  if (drawn === undefined && last - first >= 2 * NODES) {
    const middle = Math.floor((first + last) / 2);
    fillBlock(outlook, { first, last: middle, sumOf });
    fillBlock(outlook, { first: middle + 1, last, sumOf });
  } else append(outlook, { first, last, of: drawn ?? sumOf });
}

/** The polynomial through nine sums of a block; undefined where it misses what is tried. */
function drawnThrough({ first, last, sumOf }: Block): ((pieces: number) => Expected) | undefined {
  const nodes = chebyshev({ first, last });
  const sums = nodes.map(sumOf);
  const drawn = throughNodes(nodes, sums);
  const most = Math.max(1, ...sums.map(({ short }) => short));
  const tried = [nodes[1], nodes[5]].map((node = first, at) =>
    Math.round((node + (nodes[at === 0 ? 2 : 6] ?? last)) / 2),
  );
  const isNear = tried.every((pieces) => {
    const [there, here] = [sumOf(pieces), drawn(pieces)];
    return Math.abs(there.fewer - here.fewer) < NEAR && Math.abs(there.short - here.short) < NEAR * most;
  });
  return isNear ? drawn : undefined;
}

/** Whole numbers near the extrema of a Chebyshev polynomial, from first to last. */
function chebyshev({ first, last }: { readonly first: number; readonly last: number }): number[] {
  return Array.from({ length: NODES }, (_, at) =>
    Math.round((first + last) / 2 - ((last - first) / 2) * Math.cos((Math.PI * at) / (NODES - 1))),
  );
}

/** Lagrange's polynomial in its barycentric form (J.-P. Berrut, L. N. Trefethen, SIAM Review 46 (2004) 501-517). */
function throughNodes(nodes: readonly number[], sums: readonly Expected[]): (pieces: number) => Expected {
  const scale = ((nodes.at(-1) ?? 1) - (nodes[0] ?? 0)) / 4;
  const weights = nodes.map((node) =>
    nodes.reduce((product, other) => (other === node ? product : (product * scale) / (node - other)), 1),
  );
  return (pieces) => {
    const there = sums[nodes.indexOf(pieces)];
    if (there) return there;
    let [whole, fewer, short] = [0, 0, 0];
    for (const [at, node] of nodes.entries()) {
      const pull = (weights[at] ?? 0) / (pieces - node);
      whole += pull;
      fewer += pull * (sums[at]?.fewer ?? 0);
      short += pull * (sums[at]?.short ?? 0);
    }
    return { fewer: Math.max(0, fewer / whole), short: Math.max(0, short / whole) };
  };
}

function append(
  { fewer, short }: Outlook,
  {
    first,
    last,
    of,
  }: { readonly first: number; readonly last: number; readonly of: (pieces: number) => Expected },
): void {
  for (let pieces = first; pieces <= last; pieces += 1) {
    const expected = of(pieces);
    fewer.push(expected.fewer);
    short.push(expected.short);
  }
}

/** Halves of a block share the ends of the whole. */
function remembering(sumOf: (pieces: number) => Expected): (pieces: number) => Expected {
  const known = new Map<number, Expected>();
  return (pieces) => {
    const sum = known.get(pieces) ?? sumOf(pieces);
    known.set(pieces, sum);
    return sum;
  };
}
