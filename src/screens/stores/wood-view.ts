import type { LotId, SpeciesId } from '../../domain/log/ids.ts';
import type { Reading } from '../../domain/rollup/lot-moisture.ts';
import type { LotFact } from '../../domain/set-up/facts.ts';
import { type Entry, factOf, factsOf, type Registers } from '../../domain/shop/registers.ts';
import type { Shrinkage } from '../../domain/wood/dimension-change.ts';
import type { Equilibrium } from '../../domain/wood/equilibrium-moisture.ts';
import { type Readiness, readyToFit } from '../../domain/wood/ready-to-fit.ts';

/** What can be said of a lot: whether it is ready, or what is missing to know it. */
export type LotVerdict =
  | { readonly kind: 'no-reading' | 'no-air' | 'no-diameter' }
  /** How far its moisture lies above what the room's air asks for, in per cent of oven-dry weight, where more is not known. */
  | { readonly kind: 'not-known'; readonly above: number }
  | Exclude<Readiness, { kind: 'not-known' }>;

export function lotVerdict({
  reading,
  air,
  diameter,
  shrinkage,
}: {
  readonly reading: Reading | undefined;
  /** What wood comes to in the room's air; null while the air is not said. */
  readonly air: Equilibrium | null;
  /** 1/100 mm; null while no part says what it is fitted on. */
  readonly diameter: number | null;
  readonly shrinkage: Shrinkage;
}): LotVerdict {
  if (!reading) return { kind: 'no-reading' };
  if (air?.kind !== 'known') return { kind: 'no-air' };
  if (diameter === null) return { kind: 'no-diameter' };
  const fit = readyToFit({ diameter, shrinkage, from: reading.percent, to: air.percent });
  return fit.kind === 'not-known' ? { kind: 'not-known', above: reading.percent - air.percent } : fit;
}

/** A diameter that wood is turned to, with the parts that are fitted on it. */
export interface Fit {
  /** 1/100 mm. */
  readonly diameter: number;
  readonly parts: readonly string[];
}

/** The fitted diameters of the shop's cores and ferrules, the smallest first. */
export function fitsOf(registers: Registers): readonly Fit[] {
  const names = new Map<number, string[]>();
  for (const { fact } of factsOf(registers, 'part')) {
    if (fact.retired || fact.fitDiameter === undefined) continue;
    names.set(fact.fitDiameter, [...(names.get(fact.fitDiameter) ?? []), fact.name]);
  }
  return [...names].map(([diameter, parts]) => ({ diameter, parts })).sort((a, b) => a.diameter - b.diameter);
}

export function liveLots(registers: Registers): readonly Entry<'lot'>[] {
  return factsOf(registers, 'lot').filter(({ fact }) => !fact.retired);
}

/** The entry of the reference data that tells of a lot's wood; null for a wood of the maker's own. */
export function referenceOf(registers: Registers, { species }: Pick<LotFact, 'species'>): string | null {
  return factOf(registers, { register: 'species', id: species })?.reference ?? null;
}

/** The woods that blanks can be of. */
export function woodChoices(registers: Registers): readonly { id: SpeciesId; name: string }[] {
  return factsOf(registers, 'species')
    .filter(({ fact }) => !fact.retired)
    .map(({ id, fact }) => ({ id, name: fact.name }));
}

export type ReadingsOfLots = ReadonlyMap<LotId, readonly Reading[]>;
