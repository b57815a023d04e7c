import type { MarkId, SpeciesId, StageId } from '../log/ids.ts';
import { type Entry, type Registers, unsortedFacts } from '../shop/registers.ts';
import { type AnsweredSignal, nameOfSeries } from './signal-series.ts';

/** A mark as it stands on a chart. */
export interface ChartMark {
  readonly id: MarkId;
  /** When it was done, ms UTC. */
  readonly at: number;
  readonly note: string;
}

/** The signals that marks answer, by their names; of several answers to one series the one that counts from the latest moment. */
export function answeredIn(registers: Registers): readonly AnsweredSignal[] {
  const found = new Map<string, AnsweredSignal>();
  for (const { fact } of marksIn(registers)) {
    const { stage, species, answers } = fact;
    if (!answers) continue;
    const signal = { stage, species, ...answers };
    const name = nameOfSeries(signal);
    if (signal.since >= (found.get(name)?.since ?? 0)) found.set(name, signal);
  }
  return [...found].sort(([a], [b]) => (a < b ? -1 : 1)).map(([, signal]) => signal);
}

/**
 * The marks on the chart of a stage and wood, or of a stage over all its woods (`species` null), in the order of their
 * times. A mark of all woods stands on every chart of its stage, that of one wood on its own alone.
 */
export function marksOf(
  registers: Registers,
  { stage, species }: { readonly stage: StageId; readonly species: SpeciesId | null },
): readonly ChartMark[] {
  return [...marksIn(registers)]
    .filter(({ fact }) => fact.stage === stage && (fact.species === null || fact.species === species))
    .map(({ id, fact: { at, note } }) => ({ id, at, note }))
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

/** The marks that nobody has taken away. */
function* marksIn(registers: Registers): Generator<Entry<'mark'>> {
  for (const entry of unsortedFacts(registers, 'mark')) if (!entry.fact.retired) yield entry;
}
