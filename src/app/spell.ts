import type { StageId } from '../domain/log/ids.ts';

/**
 * A stretch of work at one stage. `marks` are monotonic times in ms: the start, then one for each tap. Written to
 * the log only with its first tap, so that a glance at a stage leaves no trace.
 */
export interface Spell {
  readonly stage: StageId;
  readonly marks: readonly number[];
  readonly begun: boolean;
}

export function enterStage(stage: StageId, at: number): Spell {
  return { stage, marks: [at], begun: false };
}

/** Milliseconds since the last tap, or since the stage was entered. */
export function elapsedIn({ marks }: Spell, at: number): number {
  return Math.max(0, Math.round(at - (marks.at(-1) ?? at)));
}

export function afterTap(spell: Spell, at: number): Spell {
  return { ...spell, marks: [...spell.marks, at], begun: true };
}

/** After an undo the next tap is measured from the tap before the one that was taken back. */
export function afterUndo(spell: Spell): Spell {
  return spell.marks.length > 1 ? { ...spell, marks: spell.marks.slice(0, -1) } : spell;
}
