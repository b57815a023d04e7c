import { type Bounds, readWholeNumber } from '../../domain/command/whole-number.ts';
import type { StageId } from '../../domain/log/ids.ts';
import type { MachineFact } from '../../domain/set-up/facts.ts';
import { tidyText } from '../../domain/set-up/text.ts';
import { woodCareWords as words } from '../../words/wood-care-words.ts';
import { nameProblem, type Reading, readingOf } from '../parts/form/reading.ts';

/** A machine as it is typed; numbers are texts until they are saved. */
export interface MachineDraft {
  readonly name: string;
  readonly stages: readonly StageId[];
  readonly rests: 'yes' | 'no';
  readonly on: string;
  readonly off: string;
  readonly mostTurns: string;
}

const dutyBounds: Bounds = { least: 1, most: 1440 };
const turnBounds: Bounds = { least: 1, most: 99_999 };

export function machineDraftOf(machine: MachineFact | undefined): MachineDraft {
  return {
    name: machine?.name ?? '',
    stages: machine?.stages ?? [],
    rests: machine?.duty ? 'yes' : 'no',
    on: machine?.duty ? String(machine.duty.on) : '',
    off: machine?.duty ? String(machine.duty.off) : '',
    mostTurns: machine?.mostTurns == null ? '' : String(machine.mostTurns),
  };
}

/** Minutes count only while the machine needs rest; no turns typed is not said. */
export function readMachine(draft: MachineDraft): Reading<Omit<MachineFact, 'retired'>, MachineDraft> {
  const rests = draft.rests === 'yes';
  const [on, off] = [draft.on, draft.off].map((typed) => numberOf(typed, dutyBounds));
  const saysTurns = draft.mostTurns.trim() !== '';
  const turns = numberOf(draft.mostTurns, turnBounds);
  const problems = {
    name: nameProblem(draft.name),
    on: rests && on === undefined ? words.badDuty : undefined,
    off: rests && off === undefined ? words.badDuty : undefined,
    mostTurns: saysTurns && turns === undefined ? words.badTurns : undefined,
  };
  return readingOf(problems, () => ({
    name: tidyText(draft.name),
    stages: [...draft.stages],
    duty: rests && on !== undefined && off !== undefined ? { on, off } : null,
    mostTurns: turns ?? null,
  }));
}

function numberOf(typed: string, bounds: Bounds): number | undefined {
  const read = readWholeNumber(typed, bounds);
  return read.ok ? read.value : undefined;
}
