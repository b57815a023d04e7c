import type { PartId, StageId } from '../../log/ids.ts';
import { type Amount, known, notKnown, sumOf, times } from './amount.ts';

/** Parts, or a consumable, that went into some pieces. */
export interface PartUse {
  readonly part: PartId;
  /** Less what came back. */
  readonly pieces: number;
  /** Of one, in minor units; a fraction where a hundred cost a round sum; null while nobody has said. */
  readonly unitCost: number | null;
}

/** Work that went into some pieces at a stage. */
export interface StageWork {
  readonly stage: StageId;
  /** Pieces that it worked on; one that came again counts again. */
  readonly visits: number;
  /** What a visit takes, see `pieceMinutes`; undefined while that is not known. */
  readonly minutes: number | undefined;
}

/** What the parts cost. */
export function partsCost(parts: readonly PartUse[]): Amount {
  return sumOf(
    parts.map(({ part, pieces, unitCost }) =>
      times(pieces, unitCost === null ? notKnown({ what: 'unit-cost', part }) : known(unitCost)),
    ),
  );
}

/** What the work costs at `hourlyRate` minor units an hour; null while nobody has said. */
export function labourCost(work: readonly StageWork[], hourlyRate: number | null): Amount {
  const rate = hourlyRate === null ? notKnown({ what: 'hourly-rate' }) : known(hourlyRate);
  return sumOf(
    work.flatMap(({ stage, visits, minutes }) => {
      const hours = minutes === undefined ? notKnown({ what: 'minutes', stage }) : known(minutes / 60);
      if (visits === 0) return [];
      return hours.kind === 'known' ? [times(visits * hours.money, rate)] : [hours];
    }),
  );
}
