import type { PartId, ReasonId, StageId } from '../../../../src/domain/log/ids.ts';

/** Names of a small shop; ids are made of them without a check, as nothing here depends on their form. */
export const stages = { turn: 'turn' as StageId, sand: 'sand' as StageId, wax: 'wax' as StageId };
export const parts = { core: 'core' as PartId, ferrule: 'ferrule' as PartId, oil: 'oil' as PartId };
export const reasons = { tearOut: 'tear-out' as ReasonId, slip: 'slip' as ReasonId };
