import type { StageId } from '../log/ids.ts';
import { firstPassYield, rolledThroughputYield } from '../statistics/yields.ts';
import type { StageTrials } from './stage-trials.ts';

/** One factor of a rolled throughput yield. */
interface StageFactor {
  readonly stage: StageId;
  /** First visits, and those of them that ended in a pass. */
  readonly of: number;
  readonly out: number;
  /** out ÷ of */
  readonly share: number;
}

export interface RolledYield {
  /** The chance of going through without any flaw; undefined until a stage has judged a piece. */
  readonly share: number | undefined;
  /** The stages that have judged a piece, the worst first; of two that are alike the one that judged more. */
  readonly factors: readonly StageFactor[];
}

/** Rolled throughput yield of the stages that have judged a piece for the first time. */
export function rolledYield(stages: readonly StageTrials[]): RolledYield {
  const factors = stages
    .flatMap(({ stage, firstPass: { of, out } }) => {
      const share = firstPassYield(out, of);
      return share === undefined ? [] : [{ stage, of, out, share }];
    })
    .sort((a, b) => a.share - b.share || b.of - a.of);
  return { share: rolledThroughputYield(factors.map(({ share }) => share)), factors };
}
