import type { ShopEvent } from '../log/event.ts';
import type { LotId, SpeciesId } from '../log/ids.ts';
import { isVoided, type Voids } from '../shop/voids.ts';
import type { Climate } from '../wood/equilibrium-moisture.ts';

type MoistureRead = Extract<ShopEvent, { kind: 'moisture-read' }>;

/** One reading of a lot that was not taken back. */
export interface Reading {
  readonly event: MoistureRead;
  readonly species: SpeciesId;
  /** ms UTC. */
  readonly at: number;
  /** Per cent of the oven-dry weight. */
  readonly percent: number;
  readonly air: Climate | null;
}

/** The readings of a lot among events, in their order. */
export function readingsOf(
  events: readonly ShopEvent[],
  { lot, voids }: { readonly lot: LotId; readonly voids: Voids },
): readonly Reading[] {
  return events.flatMap((event) => {
    if (event.kind !== 'moisture-read' || event.lot !== lot || isVoided(voids, event)) return [];
    const { stamp, species, percent, air } = event;
    return [
      {
        event,
        species,
        at: stamp.wall,
        percent: percent / 10,
        air: air ? { celsius: air.celsius / 10, humidity: air.humidity / 10 } : null,
      },
    ];
  });
}

/** The air of the latest reading that has one, of all lots together; null without any. */
export function latestAir(lots: readonly (readonly Reading[])[]): Climate | null {
  const withAir = lots.flat().filter(({ air }) => air !== null);
  return withAir.toSorted((a, b) => a.at - b.at).at(-1)?.air ?? null;
}
