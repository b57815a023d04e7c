import type { ActResult, Session } from '../../../app/session.ts';
import {
  type BulkLine,
  type BulkMove,
  type BulkStep,
  commandsOf,
} from '../../../domain/command/bulk-move.ts';
import type { Problem } from '../../../domain/command/problem.ts';
import type { ShopEvent } from '../../../domain/log/event.ts';
import type { StageId } from '../../../domain/log/ids.ts';
import type { Registers } from '../../../domain/shop/registers.ts';
import { nameOf } from '../../../words/names.ts';
import { problemWords } from '../../../words/problem-words.ts';
import { scanWords as words } from '../../../words/scan-words.ts';
import { readyIn } from '../../../words/time-words.ts';

/** What labels are scanned for: to open a tray, or to do the same with several. */
export type Purpose = 'open' | BulkMove;

type Would = Extract<BulkLine, { kind: 'would' }>;
type WouldNot = Extract<BulkLine, { kind: 'would-not' }>;

/** What has become of a line that was done; `problem` is what refused the rest of it. */
export interface Done {
  readonly line: Would;
  readonly events: readonly ShopEvent[];
  readonly problem: Problem | null;
}

/** Does a line by the usual commands, one after the other; the first that is refused ends it. */
export async function doLine({ act }: Pick<Session, 'act'>, line: Would): Promise<Done> {
  const events: ShopEvent[] = [];
  for (const command of commandsOf(line)) {
    const result: ActResult = await act(command);
    if (result.kind === 'refused') return { line, events, problem: result.problem };
    events.push(...result.events);
  }
  return { line, events, problem: null };
}

/** What a line would do, or has done: a sentence for each of its taps. */
export function wouldWords({ steps }: Would, registers: Registers): readonly string[] {
  const stageName = (id: StageId) => nameOf(registers, { register: 'stage', id });
  return steps.map((step) => stepWords(step, stageName));
}

function stepWords({ command, next }: BulkStep, stageName: (id: StageId) => string): string {
  const { pieces, spot } = command;
  const stage = stageName(spot.stage);
  if (command.kind === 'load') return words.load(pieces, stage);
  const to = next === null ? words.finished : stageName(next);
  return spot.at === 'held' ? words.unload(pieces, stage, to) : words.pass(pieces, stage, to);
}

/** What of a line is early: that it stays in, or by how much it comes out too soon; undefined for nothing. */
export function earlyWords(
  { early }: Pick<BulkLine, 'early'>,
  { asked, now }: { asked: boolean; now: number },
): string | undefined {
  if (early === null || early.least <= now) return undefined;
  const short = early.least - now;
  return asked ? words.isEarly(early.pieces, short) : words.staysIn(early.pieces, short);
}

/** Why a line would do nothing. */
export function wouldNotWords(
  { why }: WouldNot,
  { move, registers, now }: { move: BulkMove; registers: Registers; now: number },
): string {
  if (why.kind === 'still-cures') return words.stillCures(readyIn(why.ready, now));
  if (why.kind === 'nothing-there') return words.nothingFor[move];
  return problemWords(why, registers);
}
