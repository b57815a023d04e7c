import type { Random } from '../chance/seeded-random.ts';
import { partsAt, type Scanned } from './change.ts';
import { shareOfOrders, shuffle } from './orders.ts';
import { type Part, type Run, traysOf } from './tally.ts';

/**
 * The change of a series whose groups are of several kinds: a stage over all its woods. A wood alone seldom has pieces
 * enough to tell; a blunt gouge spoils all of them.
 *
 * A split is judged by how far the flawed pieces before and since are from those expected, each wood at its own rate:
 * O₁ ln(O₁ ÷ E₁) + O₂ ln(O₂ ÷ E₂), the likelihood ratio of M. Kulldorff, A spatial scan statistic, Communications in
 * Statistics: Theory and Methods 26 (1997) 1481-1496 (from memory), in time instead of space. How often chance alone
 * makes a split as strange is found by putting the trays of each wood into random order among its own places: so neither
 * the mix of woods nor trays that differ by nature are taken for a change.
 *
 * @param options.most orders to draw: see `shareOfOrders`
 * @returns undefined while there is nothing to compare: fewer than two groups, or nothing or everything flawed
 */
export function mixedScan(
  run: Run,
  { random, most }: { readonly random: Random; readonly most: number },
): Scanned | undefined {
  if (run.groups.length < 2 || run.flawed === 0 || run.flawed === run.pieces) return undefined;
  const { trays, kinds } = mixedTrays(run);
  const found = strangestSplit(trays, run.flawed);
  const { flawed } = partsAt(run, found.at).after;
  const order = [...trays];
  const p = shareOfOrders(() => {
    for (const kind of kinds) shuffleAmong(order, kind, random);
    return isAsStrange(order, { flawed: run.flawed, ratio: found.ratio - rounding });
  }, most);
  return {
    ...partsAt(run, found.at),
    direction: flawed > found.expected ? 'worse' : 'better',
    expected: found.expected,
    p,
    leastP: 1 / (most + 1),
  };
}

/** Orders that only rounding tells apart are equally strange. */
const rounding = 1e-9;

interface MixedTray {
  readonly flawed: number;
  /** How many of its pieces were flawed at the rate of its kind. */
  readonly expected: number;
}

/** The trays of one kind in any order, and the places in the series that are theirs. */
interface Kind {
  readonly trays: MixedTray[];
  readonly places: readonly number[];
}

function mixedTrays(run: Run): { readonly trays: readonly MixedTray[]; readonly kinds: readonly Kind[] } {
  const parts = traysOf(run);
  const sums = new Map<string, Part>();
  for (const [at, { kind }] of run.groups.entries()) {
    const { flawed, pieces } = sums.get(kind) ?? none;
    const own = parts[at] ?? none;
    sums.set(kind, { flawed: flawed + own.flawed, pieces: pieces + own.pieces });
  }
  const trays = run.groups.map(({ kind }, at): MixedTray => {
    const { flawed, pieces } = parts[at] ?? none;
    const sum = sums.get(kind) ?? none;
    return { flawed, expected: (pieces * sum.flawed) / sum.pieces };
  });
  const kinds = [...sums.keys()].map((name) => {
    const places = [...run.groups.keys()].filter((at) => run.groups[at]?.kind === name);
    return { places, trays: trays.filter((_, at) => run.groups[at]?.kind === name) };
  });
  return { trays, kinds };
}

const none: Part = { flawed: 0, pieces: 0 };

function shuffleAmong(order: MixedTray[], { trays, places }: Kind, random: Random): void {
  shuffle(trays, random);
  for (let at = 0; at < trays.length; at += 1) {
    const place = places[at];
    const tray = trays[at];
    if (place !== undefined && tray) order[place] = tray;
  }
}

/** The last tray before the strangest split, how strange it is, and how many flawed ones are expected since. */
function strangestSplit(
  trays: readonly MixedTray[],
  flawed: number,
): { at: number; ratio: number; expected: number } {
  let strangest = { at: 0, ratio: -1, expected: 0 };
  let before = 0;
  let expected = 0;
  for (const [at, tray] of trays.slice(0, -1).entries()) {
    before += tray.flawed;
    expected += tray.expected;
    const ratio = strangeness(before, expected) + strangeness(flawed - before, flawed - expected);
    if (ratio > strangest.ratio + rounding)
      strangest = { at, ratio, expected: Math.max(0, flawed - expected) };
  }
  return strangest;
}

/** Where nothing is found there is nothing to weigh, whatever was expected. */
function strangeness(found: number, expected: number): number {
  return found === 0 ? 0 : found * Math.log(found / Math.max(expected, Number.MIN_VALUE));
}

/** Whether any split is as strange as `ratio`. Asked of some hundred thousand orders, so it seldom takes a logarithm. */
function isAsStrange(
  trays: readonly MixedTray[],
  { flawed, ratio }: { readonly flawed: number; readonly ratio: number },
): boolean {
  let before = 0;
  let expected = 0;
  for (let at = 0; at < trays.length - 1; at += 1) {
    before += trays[at]?.flawed ?? 0;
    expected += trays[at]?.expected ?? 0;
    // As ln x ≤ x − 1, a split is at most as strange as (O₁ − E₁)² ÷ E₁ + (O₂ − E₂)² ÷ E₂.
    const most = (before - expected) ** 2 * flawed;
    if (most < ratio * expected * (flawed - expected)) continue;
    if (strangeness(before, expected) + strangeness(flawed - before, flawed - expected) >= ratio) return true;
  }
  return false;
}
