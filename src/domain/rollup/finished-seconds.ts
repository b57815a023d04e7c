import type { TrayFacts } from '../log/event.ts';
import type { VariantId } from '../log/ids.ts';
import { placeKey } from '../log/place.ts';
import { meanArrival, placesOf } from '../shop/positions.ts';
import type { Shop } from '../shop/shop.ts';
import { trayFacts } from '../shop/trays.ts';

/** Finished seconds of one tray; `since` is when they were finished on average, ms UTC. */
export interface TraySeconds {
  readonly of: TrayFacts;
  readonly pieces: number;
  readonly since: number | null;
}

const finishedSecond = placeKey({ at: 'finished', grade: 'second' });

/** The trays that finished seconds of a variant are from, the oldest trays first. */
export function finishedSeconds({ trays, positions }: Shop, variant: VariantId): readonly TraySeconds[] {
  return [...trays.values()]
    .filter((record) => record.variant === variant)
    .sort((a, b) => a.made - b.made || a.code.localeCompare(b.code, 'en', { numeric: true }))
    .flatMap((record) => {
      const standing = placesOf(positions, record.tray).get(finishedSecond);
      return standing && standing.pieces > 0
        ? [{ of: trayFacts(record), pieces: standing.pieces, since: meanArrival(standing) }]
        : [];
    });
}
