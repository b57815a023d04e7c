import type { Outcome } from '../log/event.ts';
import type { PartId, StageId } from '../log/ids.ts';
import { stagesBefore } from '../route/route.ts';
import type { VariantFact } from '../set-up/facts.ts';

type Bill = VariantFact['bill'];
interface PartDelta {
  readonly part: PartId;
  readonly pieces: number;
}

interface Leaving {
  readonly bill: Bill;
  readonly route: readonly StageId[];
  readonly stage: StageId;
  readonly pieces: number;
}

/** Parts used when pieces go on from a stage: those that the stage fits. */
export function partsFitted({ bill, stage, pieces }: Leaving): PartDelta[] {
  return bill
    .filter((line) => line.stage === stage)
    .map(({ part, each }) => ({ part, pieces: -each * pieces }));
}

/** Parts that come back when pieces are sent back from `stage` to before the stage that had fitted them. */
function partsReturned({ bill, route, stage, pieces }: Leaving, to: StageId): PartDelta[] {
  const undone = new Set(route.slice(route.indexOf(to), route.indexOf(stage)));
  return bill
    .filter((line) => undone.has(line.stage))
    .map(({ part, each }) => ({ part, pieces: each * pieces }));
}

/** The parts that pieces at `stage` already hold, and that a scrap could save. */
export function partsHeld(leaving: Omit<Leaving, 'pieces'>): readonly PartId[] {
  return [...new Set(linesFitted(leaving).map(({ part }) => part))];
}

/** The lines of the bill that stages before `stage` have fitted. */
function linesFitted({ bill, route, stage }: Omit<Leaving, 'pieces'>): Bill {
  const passed = new Set(stagesBefore(route, stage));
  return bill.filter((line) => passed.has(line.stage));
}

/** What a flaw's outcome does to the stores: parts used or back on the shelf, and saved ones that are to be cleaned first. */
export interface StoresChange {
  readonly parts: PartDelta[];
  readonly toClean: PartDelta[];
}

export function partsOfOutcome(
  leaving: Leaving,
  { outcome, isCleaned }: { outcome: Outcome; isCleaned: (part: PartId) => boolean },
): StoresChange {
  switch (outcome.kind) {
    case 'mended':
    case 'second':
      return { parts: partsFitted(leaving), toClean: [] };
    case 'sent-back':
      return { parts: partsReturned(leaving, outcome.to), toClean: [] };
    case 'scrapped': {
      const saved = linesFitted(leaving)
        .filter(({ part }) => outcome.saved.includes(part))
        .map(({ part, each }) => ({ part, pieces: each * leaving.pieces }));
      return {
        parts: saved.filter(({ part }) => !isCleaned(part)),
        toClean: saved.filter(({ part }) => isCleaned(part)),
      };
    }
  }
}
