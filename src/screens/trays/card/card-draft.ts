import type { CardLine } from '../../../domain/command/command.ts';
import { readWholeNumber } from '../../../domain/command/whole-number.ts';
import type { Outcome } from '../../../domain/log/event.ts';
import type { PartId, ReasonId, StageId } from '../../../domain/log/ids.ts';
import { mostPieces } from '../../../domain/log/place.ts';
import { cardWords as words } from '../../../words/card-words.ts';
import { numberProblemWords } from '../../../words/problem-words.ts';

/** What became of flawed pieces, as a choice of the form. */
export type CardOutcome = 'mended' | 'second' | 'scrapped' | 'scrapped-saved' | `back:${StageId}`;

/** One flaw of a stage as it is typed. */
export interface FlawDraft {
  /** Tells the lines of a stage apart. */
  readonly key: number;
  readonly reason: ReasonId | undefined;
  readonly outcome: CardOutcome | undefined;
  readonly pieces: string;
}

/** One stage of a card as it is typed. */
export interface StageDraft {
  readonly passed: string;
  readonly flaws: readonly FlawDraft[];
}

/** A pencilled card as it is typed, by stage; a stage that nothing is typed of is not in it. */
export type CardDraft = ReadonlyMap<StageId, StageDraft>;

export const emptyStage: StageDraft = { passed: '', flaws: [] };

/** Where a line of the card stands on the form. */
export type LineKey = string;
export const passKey = (stage: StageId): LineKey => `${stage}/passed`;
export const flawKey = (stage: StageId, key: number): LineKey => `${stage}/${key}`;

/** What a card amounts to: its lines, each with its place on the form, or what is wrong where. */
export type CardReading =
  | { readonly ok: true; readonly lines: readonly CardLine[]; readonly keys: readonly LineKey[] }
  | { readonly ok: false; readonly problems: ReadonlyMap<LineKey, string> };

const bounds = { least: 1, most: mostPieces };

interface Read {
  readonly key: LineKey;
  readonly line: CardLine | null;
  readonly problem: string | null;
}

/**
 * Reads a card in the order of its route. An empty count is a stage at which nothing was ticked; a nought is the same.
 * `heldAt` says which parts a piece at a stage holds that a scrap could save.
 */
export function readCard(
  draft: CardDraft,
  { route, heldAt }: { route: readonly StageId[]; heldAt: (stage: StageId) => readonly PartId[] },
): CardReading {
  const read = route.flatMap((stage): readonly Read[] => {
    const { passed, flaws } = draft.get(stage) ?? emptyStage;
    return [
      ...flaws.map((flaw) => readFlaw(flaw, { stage, saved: heldAt(stage) })),
      readPassed(passed, stage),
    ].filter((each) => each !== null);
  });
  const problems = new Map(
    read.flatMap(({ key, problem }) => (problem === null ? [] : [[key, problem] as const])),
  );
  if (problems.size > 0) return { ok: false, problems };
  const entered = read.flatMap(({ key, line }) => (line ? [{ key, line }] : []));
  return { ok: true, lines: entered.map(({ line }) => line), keys: entered.map(({ key }) => key) };
}

function isNone(typed: string): boolean {
  return /^\s*0*\s*$/.test(typed);
}

function readPassed(typed: string, stage: StageId): Read | null {
  if (isNone(typed)) return null;
  const key = passKey(stage);
  const read = readWholeNumber(typed, bounds);
  return read.ok
    ? { key, line: { kind: 'pass', stage, pieces: read.value }, problem: null }
    : { key, line: null, problem: numberProblemWords(read.problem) };
}

/** A line of which nothing is filled in is none; one that is filled in by half says what is missing. */
function readFlaw(
  { key, reason, outcome, pieces }: FlawDraft,
  { stage, saved }: { stage: StageId; saved: readonly PartId[] },
): Read | null {
  const at = flawKey(stage, key);
  const wrong = (problem: string): Read => ({ key: at, line: null, problem });
  if (isNone(pieces)) return reason || outcome ? wrong(words.noCount) : null;
  const read = readWholeNumber(pieces, bounds);
  if (!read.ok) return wrong(numberProblemWords(read.problem));
  if (!reason) return wrong(words.noReason);
  if (!outcome) return wrong(words.noOutcome);
  const line: CardLine = {
    kind: 'flaw',
    stage,
    pieces: read.value,
    reasons: [reason],
    outcome: outcomeOf(outcome, saved),
  };
  return { key: at, line, problem: null };
}

function outcomeOf(chosen: CardOutcome, saved: readonly PartId[]): Outcome {
  switch (chosen) {
    case 'mended':
    case 'second':
      return { kind: chosen };
    case 'scrapped':
      return { kind: 'scrapped', saved: [] };
    case 'scrapped-saved':
      return { kind: 'scrapped', saved: [...saved] };
    default:
      return { kind: 'sent-back', to: chosen.slice('back:'.length) as StageId };
  }
}
