import type { SpeciesId, StageId } from '../log/ids.ts';
import { type Counter, countOf } from '../shop/counter.ts';
import type { Shop } from '../shop/shop.ts';
import { rolledThroughputYield, type Share, shareValue } from './first-pass-yield.ts';

/** First-pass yield of one stage; `share` is clean first visits of all first visits. */
export interface StageYield {
  readonly stage: StageId;
  readonly share: Share;
  readonly repeats: number;
}

/** Where the pieces of one wood went. made + corrected = inFlight + firsts + seconds + scrapped. */
export interface SpeciesYield {
  readonly species: SpeciesId;
  readonly made: number;
  readonly corrected: number;
  readonly inFlight: number;
  readonly firsts: number;
  readonly seconds: number;
  readonly scrapped: number;
  readonly stages: readonly StageYield[];
  /** Product over the stages that have judged a piece of this wood; null while none has. */
  readonly rolled: number | null;
}

/** Every wood that the shop has made pieces of, along the stages in the order given. */
export function yieldBySpecies(shop: Shop, stages: readonly StageId[]): readonly SpeciesYield[] {
  const { ledger } = shop;
  const woods = new Set([...ledger.made.keys(), ...ledger.corrected.keys()].map(firstPart<SpeciesId>));
  return [...woods].map((species) => {
    const judged = stages
      .map((stage) => stageYield(shop, { stage, species }))
      .filter(({ share }) => share.of !== 0);
    return {
      species,
      made: sumUnder(ledger.made, species),
      corrected: sumUnder(ledger.corrected, species),
      inFlight: sumWip(shop, species),
      firsts: sumUnder(ledger.finished, species, 'first'),
      seconds: sumUnder(ledger.finished, species, 'second'),
      scrapped: sumUnder(ledger.scrapped, species),
      stages: judged,
      rolled: rolledThroughputYield(
        judged.map(({ share }) => shareValue(share)).filter((each) => each !== null),
      ),
    };
  });
}

function stageYield(
  { visits }: Shop,
  { stage, species }: { stage: StageId; species: SpeciesId },
): StageYield {
  const key = `${stage}|${species}` as const;
  return {
    stage,
    share: { of: countOf(visits.first, key), out: countOf(visits.clean, key) },
    repeats: countOf(visits.repeat, key),
  };
}

function firstPart<Id extends string>(key: string): Id {
  // A key is written by the ledger from ids, which hold no bar.
  return key.slice(0, key.indexOf('|')) as Id;
}

function sumUnder(counter: Counter, species: SpeciesId, grade?: string): number {
  let sum = 0;
  for (const [key, pieces] of counter) {
    if (key.startsWith(`${species}|`) && (grade === undefined || key.endsWith(`|${grade}`))) sum += pieces;
  }
  return sum;
}

function sumWip({ ledger }: Shop, species: SpeciesId): number {
  let sum = 0;
  for (const [key, pieces] of ledger.wip) {
    if (key.split('|')[1] === species) sum += pieces;
  }
  return sum;
}
