import {
  type JudgedLine,
  newTargetsOf,
  type TargetChanges,
} from '../../domain/plan/targets/judge-targets.ts';
import { planWords as words } from '../../words/plan-words.ts';

type Understood = Extract<JudgedLine, { kind: 'understood' }>;
type Refused = Extract<JudgedLine, { kind: 'refused' }>;

/** The lines of a file, sorted out: each is in one of the three. */
export interface SortedLines {
  readonly changing: readonly Understood[];
  readonly same: readonly Understood[];
  readonly refused: readonly Refused[];
  readonly targets: ReturnType<typeof newTargetsOf>;
}

export function sortLines(judged: readonly JudgedLine[]): SortedLines {
  const understood = judged.filter((line) => line.kind === 'understood');
  const hasChange = ({ changes }: Understood) => Object.keys(changes).length > 0;
  return {
    changing: understood.filter(hasChange),
    same: understood.filter((line) => !hasChange(line)),
    refused: judged.filter((line) => line.kind === 'refused'),
    targets: newTargetsOf(judged),
  };
}

export function changeWords({ good, due, chance }: TargetChanges): string {
  return [
    ...(good ? [words.change1.good(good.from, good.to)] : []),
    ...(due ? [words.change1.due(due.from, due.to)] : []),
    ...(chance ? [words.change1.chance(chance.from, chance.to)] : []),
  ].join(', ');
}

/** A line as the file has it, short enough for a table. */
export function lineText({ batch, variant, good, due, chance }: JudgedLine['of']): string {
  const text = [batch, variant, good, due, chance].join(' · ');
  return text.length > 200 ? `${text.slice(0, 200)} …` : text;
}
