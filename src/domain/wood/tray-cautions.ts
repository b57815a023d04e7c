import type { BatchId, SpeciesId, StageId } from '../log/ids.ts';
import { routeOfBatch, stagesBefore } from '../route/route.ts';
import type { Reaction, SpeciesFact, StageDoing, StageFact } from '../set-up/facts.ts';
import { factOf, type Registers } from '../shop/registers.ts';
import { standingReaction } from './reactions.ts';

/** What to beware of with pieces of one wood at one stage. */
export interface TrayCautions {
  /** The wood, where its dust or touch is met at the stage. */
  readonly wood: SpeciesFact | null;
  /** What it did to the maker, where it is met. */
  readonly reaction: Reaction | null;
  /** The stage spins pieces that had a flat cut before. */
  readonly flat: boolean;
  /** Finish or solvent: fumes, and rags that can catch fire. */
  readonly fumes: boolean;
}

/**
 * The cautions of a tray at a stage. Where nobody has said what a stage does, work at the bench is taken to make dust: a
 * caution too many costs a line, one too few a lung.
 */
export function trayCautions(
  registers: Registers,
  {
    stage,
    species,
    batch,
  }: { readonly stage: StageId; readonly species: SpeciesId; readonly batch: BatchId },
): TrayCautions {
  const fact = factOf(registers, { register: 'stage', id: stage });
  const wood = factOf(registers, { register: 'species', id: species });
  const isMet = fact !== undefined && makesDust(fact);
  const before = stagesBefore(routeOfBatch(registers, batch) ?? [], stage);
  const flatBefore = before.some((id) => does(factOf(registers, { register: 'stage', id }), 'flat'));
  return {
    wood: isMet ? (wood ?? null) : null,
    reaction: wood && fact?.kind === 'bench' ? standingReaction(wood) : null,
    flat: flatBefore && does(fact, 'turns'),
    fumes: does(fact, 'fumes'),
  };
}

function makesDust(stage: StageFact): boolean {
  return stage.does ? stage.does.includes('dust') : stage.kind === 'bench';
}

export function does(stage: StageFact | undefined, what: StageDoing): boolean {
  return stage?.does?.includes(what) ?? false;
}

/** The stages of the shop that make dust, as the maker has said; null while nothing was said of any stage. */
export function dustStages(registers: Registers): readonly StageId[] | null {
  const found: StageId[] = [];
  let isSaid = false;
  for (const { set } of registers.values()) {
    if (set.register !== 'stage') continue;
    isSaid ||= set.value.does !== undefined;
    if (does(set.value, 'dust')) found.push(set.id);
  }
  return isSaid ? found : null;
}
