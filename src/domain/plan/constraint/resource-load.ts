/** Hands at a stage, or places in clamps and racks: whatever a shop has only so much of. */
export interface Resource<Name extends string> {
  readonly name: Name;
  /** Minutes of hands; for a hold pieces: rounds × capacity (`holdPlaces`). Infinity where nothing limits it. */
  readonly available: number;
}

/** What is wanted of a variant, and what of each resource a good piece of it takes. */
export interface Wanted<Variant extends string, Name extends string> {
  readonly variant: Variant;
  /** Good pieces. */
  readonly pieces: number;
  /** Of a resource, for one good piece (see `visitsPerGood`); a resource left out takes none, undefined is not known. */
  readonly uses: ReadonlyMap<Name, number | undefined>;
}

export interface ResourceLoad<Variant extends string, Name extends string> {
  readonly resource: Name;
  readonly available: number;
  /** What all that is wanted takes of it, as far as it is known. */
  readonly wanted: number;
  /** wanted ÷ available: more than 1 is too much. Infinity where none is available and some is wanted. */
  readonly ratio: number;
  /** Variants of which it is not known what they take, and that are in no sum. */
  readonly unknown: readonly Variant[];
}

/** Places that a hold has in so many rounds; null is a capacity without limit. */
export const holdPlaces = (capacity: number | null, rounds: number): number =>
  capacity === null ? Number.POSITIVE_INFINITY : capacity * rounds;

/**
 * Load against capacity, the most loaded first: that is the constraint, and with a ratio of more than 1 not all that is
 * wanted can be made.
 *
 * @throws {RangeError} for quantities below 0 or that are no numbers
 * @example
 * resourceLoads([{ name: 'lathe', available: 2400 }], [{ variant: 'awl', pieces: 100, uses: new Map([['lathe', 30]]) }])
 * // [{ resource: 'lathe', wanted: 3000, available: 2400, ratio: 1.25, unknown: [] }]
 */
export function resourceLoads<Variant extends string, Name extends string>(
  resources: readonly Resource<Name>[],
  wanted: readonly Wanted<Variant, Name>[],
): readonly ResourceLoad<Variant, Name>[] {
  return resources
    .map(({ name, available }) => loadOf({ name, available }, wanted))
    .sort((a, b) => (a.ratio === b.ratio ? 0 : b.ratio - a.ratio));
}

function loadOf<Variant extends string, Name extends string>(
  { name, available }: Resource<Name>,
  wanted: readonly Wanted<Variant, Name>[],
): ResourceLoad<Variant, Name> {
  demandQuantity(available);
  const unknown: Variant[] = [];
  let sum = 0;
  for (const { variant, pieces, uses } of wanted) {
    const each = uses.has(name) ? uses.get(name) : 0;
    demandQuantity(pieces);
    if (each === undefined) {
      if (pieces > 0) unknown.push(variant);
      continue;
    }
    demandQuantity(each);
    sum += pieces * each;
  }
  return { resource: name, available, wanted: sum, ratio: sum === 0 ? 0 : sum / available, unknown };
}

function demandQuantity(quantity: number): void {
  if (!(quantity >= 0)) throw new RangeError(`Not a quantity: ${quantity}`);
}
