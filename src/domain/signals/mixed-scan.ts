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
  const trays = traysOf(run);
  const kinds = kindsOf(run, trays);
  const found = strangestSplit(trays, kinds);
  const { flawed } = partsAt(run, found.at).after;
  const p = shareOfOrders(() => {
    const shuffled = [...trays];
    for (const { places } of kinds) {
      const own = places.map((place) => trays[place]);
      shuffle(own, random);
      for (const [at, place] of places.entries()) shuffled[place] = own[at] ?? { flawed: 0, pieces: 0 };
    }
    return strangestSplit(shuffled, kinds).ratio >= found.ratio - rounding;
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

interface Kind {
  /** Share of its pieces that are flawed. */
  readonly rate: number;
  readonly places: readonly number[];
}

function kindsOf(run: Run, trays: readonly Part[]): Kind[] {
  const names = new Set(run.groups.map(({ kind }) => kind));
  return [...names].map((name) => {
    const places = [...run.groups.keys()].filter((at) => run.groups[at]?.kind === name);
    const sum = (of: keyof Part) => places.reduce((total, place) => total + (trays[place]?.[of] ?? 0), 0);
    return { rate: sum('flawed') / sum('pieces'), places };
  });
}

/** The last group before the strangest split, how strange it is, and how many flawed ones are expected since. */
function strangestSplit(
  trays: readonly Part[],
  kinds: readonly Kind[],
): { at: number; ratio: number; expected: number } {
  const expectedOf = new Float64Array(trays.length);
  for (const { rate, places } of kinds) {
    for (const place of places) expectedOf[place] = rate * (trays[place]?.pieces ?? 0);
  }
  const flawed = trays.reduce((sum, tray) => sum + tray.flawed, 0);
  let strangest = { at: 0, ratio: -1, expected: 0 };
  let before = 0;
  let expected = 0;
  for (const [at, tray] of trays.entries()) {
    if (at === trays.length - 1) break;
    before += tray.flawed;
    expected += expectedOf[at] ?? 0;
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
