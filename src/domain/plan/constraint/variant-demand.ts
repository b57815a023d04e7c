import type { BatchId, PartId, SpeciesId, StageId, VariantId } from '../../log/ids.ts';
import type { VariantFact } from '../../set-up/facts.ts';
import { type Amount, known, type Missing, missingOf, notKnown } from '../cost/amount.ts';
import { partsCost } from '../cost/work-cost.ts';
import { piecesAhead, type StagePieces } from '../starts/pieces-ahead.ts';
import type { StageBelief } from '../starts/stage-beliefs.ts';
import { visitsPerGood } from './visits-per-good.ts';

/** A variant of a batch, as the shop has it. */
export interface DemandAsked extends Pick<VariantFact, 'bill' | 'firstPrice' | 'secondPrice'> {
  /** Of its question on starts. */
  readonly key: string;
  readonly batch: BatchId;
  readonly variant: VariantId;
  readonly species: SpeciesId;
  readonly route: readonly StageId[];
  /** Pieces of both grades that a stage has yet to try. */
  readonly standing: readonly StagePieces[];
}

/** What a variant takes of a stage. */
interface StageDemand {
  readonly stage: StageId;
  /** Visits that are ahead, those of pieces to be started and those that come again among them. */
  readonly ahead: number;
  /** Visits for one piece that comes out. */
  readonly perOut: number;
  /** Share of those that it tries which come through, in either grade. */
  readonly through: number;
  /** Of hands for a visit; undefined while not known. */
  readonly minutes: number | undefined;
}

export interface VariantDemand {
  readonly key: string;
  readonly batch: BatchId;
  readonly variant: VariantId;
  readonly stages: readonly StageDemand[];
  /** Share of the pieces started that come out, in either grade. */
  readonly comesOut: number;
  /** Of the pieces that come out, the share that are firsts. */
  readonly firstShare: number;
  /** Of a piece that comes out, a first or a second as they come: minor units. */
  readonly price: Amount;
  /** Parts and consumables of it and of what is lost on its way, none saved. */
  readonly parts: Amount;
}

export interface Believed {
  /** Along the route: of staying a first, and of coming through at all. */
  readonly firsts: readonly StageBelief[];
  readonly finished: readonly StageBelief[];
  /** Pieces that are to be started. */
  readonly starts: number;
  /** Visits ÷ pieces tried: what comes again is worked on again. */
  readonly visitsPerTrial: (stage: StageId) => number;
  readonly minutesAt: (stage: StageId) => number | undefined;
  /** Minor units of one part; null while nobody has said. */
  readonly unitCost: (part: PartId) => number | null;
}

/**
 * What a variant wants of each stage, and what a piece of it brings in and takes. Seconds go through the whole route too, so
 * work and parts are those of pieces that come out in either grade, and so is the price: of both, by their shares.
 */
export function variantDemand(asked: DemandAsked, believed: Believed): VariantDemand {
  const { firsts, finished, starts, visitsPerTrial, minutesAt, unitCost } = believed;
  const ahead = piecesAhead(finished, { standing: asked.standing, starts });
  const perOut = visitsPerGood(finished);
  const comesOut = throughAll(finished);
  const firstShare = Math.min(1, throughAll(firsts) / comesOut);
  // A part is used when a piece leaves the stage that fits it.
  const parts = asked.bill.flatMap(({ part, each, stage }) => {
    const at = asked.route.indexOf(stage);
    return at < 0 ? [] : [{ part, pieces: each * (perOut[at + 1] ?? 1), unitCost: unitCost(part) }];
  });
  return {
    ...{ key: asked.key, batch: asked.batch, variant: asked.variant, comesOut, firstShare },
    price: priceOf(asked, firstShare),
    parts: partsCost(parts),
    stages: ahead.map(({ stage, pieces }, at) => ({
      stage,
      ahead: pieces * visitsPerTrial(stage),
      perOut: (perOut[at] ?? 1) * visitsPerTrial(stage),
      through: throughAll(finished.slice(at, at + 1)),
      minutes: minutesAt(stage),
    })),
  };
}

/** Price less parts of a piece that comes out; minor units. */
export function contributionOf({ price, parts }: Pick<VariantDemand, 'price' | 'parts'>): Amount {
  return price.kind === 'known' && parts.kind === 'known'
    ? known(price.money - parts.money)
    : notKnown(...missingOf([price, parts]));
}

const throughAll = (beliefs: readonly StageBelief[]): number =>
  beliefs.reduce((share, { alpha, beta }) => (share * alpha) / (alpha + beta), 1);

function priceOf(
  { firstPrice, secondPrice }: Pick<DemandAsked, 'firstPrice' | 'secondPrice'>,
  firstShare: number,
): Amount {
  if (firstPrice !== null && secondPrice !== null)
    return known(firstShare * firstPrice + (1 - firstShare) * secondPrice);
  const missing: Missing[] = [];
  if (firstPrice === null) missing.push({ what: 'price', grade: 'first' });
  if (secondPrice === null) missing.push({ what: 'price', grade: 'second' });
  return notKnown(...missing);
}
