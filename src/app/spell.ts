import type { Command } from '../domain/command/command.ts';
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
function elapsedIn({ marks }: Spell, at: number): number {
  return Math.max(0, Math.round(at - (marks.at(-1) ?? at)));
}

function afterTap(spell: Spell, at: number): Spell {
  return { ...spell, marks: [...spell.marks, at], begun: true };
}

/** After an undo the next tap is measured from the tap before the one that was taken back. */
export function afterUndo(spell: Spell): Spell {
  return spell.marks.length > 1 ? { ...spell, marks: spell.marks.slice(0, -1) } : spell;
}

/** What a command at a monotonic time (ms) does to the spell: how long it took, what goes on, and whether it begins one. */
export function spellOf(
  now: Spell | null,
  { command, at }: { command: Command; at: number },
): { elapsed: number | null; next: Spell | null; begins: boolean } {
  if (command.kind === 'end-spell')
    return { elapsed: now ? elapsedIn(now, at) : null, next: null, begins: false };
  if (command.kind !== 'pass' && command.kind !== 'flaw' && command.kind !== 'load') {
    return { elapsed: null, next: now, begins: false };
  }
  const { stage } = command.spot;
  if (now?.stage !== stage) return { elapsed: null, next: afterTap(enterStage(stage, at), at), begins: true };
  return { elapsed: elapsedIn(now, at), next: afterTap(now, at), begins: !now.begun };
}
