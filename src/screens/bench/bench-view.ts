import type { Spot } from '../../domain/command/command.ts';
import { partsHeld } from '../../domain/command/parts.ts';
import type { OutcomeKind } from '../../domain/log/event.ts';
import type { PartId, ReasonId, StageId, TrayId } from '../../domain/log/ids.ts';
import type { Grade } from '../../domain/log/place.ts';
import { likeliestOutcomes } from '../../domain/rollup/flaw-table.ts';
import { holds } from '../../domain/rollup/holds.ts';
import { mayComeOut, piecesOf } from '../../domain/rollup/may-come-out.ts';
import { stagesOfTray, traysAtStage } from '../../domain/rollup/waiting.ts';
import { routeOfBatch, stagesBefore } from '../../domain/route/route.ts';
import type { StageFact } from '../../domain/set-up/facts.ts';
import { factOf } from '../../domain/shop/registers.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import type { TrayRecord } from '../../domain/shop/trays.ts';

/** One tray at one stage as the stage screen shows it. */
export interface BenchView {
  readonly tray: TrayRecord;
  readonly stage: StageFact & { readonly id: StageId };
  readonly waiting: Readonly<Record<Grade, number>>;
  readonly held: Readonly<Record<Grade, number>>;
  /** Grade that a tap counts: the one asked for, or the first that has pieces. */
  readonly grade: Grade;
  /** When the soonest cure of this tray is over, ms UTC; null when nothing cures. */
  readonly ready: number | null;
  /** Pieces of this tray whose cure is over. */
  readonly readyNow: number;
  /** Pieces of the grade that may come out without being asked about, in the order in which a tap takes them. */
  readonly mayComeOut: number;
  /** The next tray waiting at this stage; null when there is none. */
  readonly next: TrayId | null;
  /** Where the tray itself goes on, once nothing of it is left here: its next stage of the route that it has pieces at. */
  readonly nextStage: StageId | null;
  readonly onRoute: boolean;
}

interface Asked {
  readonly stage: StageId;
  readonly tray: TrayId;
  readonly grade: Grade | null;
  readonly now: number;
}

const none = { first: 0, second: 0 };

/** What the stage screen shows; undefined when the tray or the stage is not known. */
export function benchView(shop: Shop, asked: Asked): BenchView | undefined {
  const tray = shop.trays.get(asked.tray);
  const fact = factOf(shop.registers, { register: 'stage', id: asked.stage });
  if (!tray || !fact) return undefined;
  const there = stagesOfTray(shop, asked.tray).find(({ stage }) => stage === asked.stage);
  const { waiting, held } = there ?? { waiting: none, held: none };
  const has = (grade: Grade) => waiting[grade] > 0 || held[grade] > 0;
  const curing = holds(shop).filter(
    ({ tray: { tray: id }, stage }) => id === asked.tray && stage === asked.stage,
  );
  const grade =
    asked.grade && has(asked.grade) ? asked.grade : !has('first') && has('second') ? 'second' : 'first';
  return {
    tray,
    stage: { ...fact, id: asked.stage },
    waiting,
    held,
    grade,
    ready: curing[0]?.ready ?? null,
    readyNow: piecesOf(curing.filter(({ ready }) => ready <= asked.now)),
    mayComeOut: mayComeOut(
      curing.filter((hold) => hold.grade === grade),
      asked.now,
    ),
    next: nextTray(shop, asked),
    nextStage: nextStage(shop, { tray, stage: asked.stage }),
    onRoute: routeOfBatch(shop.registers, tray.batch)?.includes(asked.stage) ?? false,
  };
}

/** The tray that waits longest at the stage, the one on the screen aside; from there round the list. */
function nextTray(shop: Shop, { stage, tray }: Asked): TrayId | null {
  const waiting = traysAtStage(shop, stage).filter(
    ({ waiting, held }) => waiting.first + waiting.second + held.first + held.second > 0,
  );
  const here = waiting.findIndex((each) => each.tray.tray === tray);
  const next = waiting[(here + 1) % waiting.length];
  return next && next.tray.tray !== tray ? next.tray.tray : null;
}

function nextStage(shop: Shop, { tray, stage }: { tray: TrayRecord; stage: StageId }): StageId | null {
  const route = routeOfBatch(shop.registers, tray.batch) ?? [];
  const there = new Set(stagesOfTray(shop, tray.tray).map((at) => at.stage));
  if (there.has(stage)) return null;
  return route.slice(route.indexOf(stage) + 1).find((each) => there.has(each)) ?? null;
}

/** Where a tap on this view counts. */
export function spotOf({ tray, stage, grade, waiting, held }: BenchView, at: 'waiting' | 'held'): Spot {
  return { tray: tray.tray, stage: stage.id, at, grade, shown: (at === 'held' ? held : waiting)[grade] };
}

/** How a flaw can end here, the likeliest first. A second is not lowered again. */
export function outcomesFor(
  shop: Shop,
  { view, reason }: { view: BenchView; reason: ReasonId },
): readonly OutcomeKind[] {
  const usual: readonly OutcomeKind[] = ['mended', 'second', 'scrapped', 'sent-back'];
  const possible = usual.filter(
    (kind) =>
      (kind !== 'second' || view.grade === 'first') &&
      (kind !== 'sent-back' || sendBackStages(shop, view).length > 0),
  );
  return likeliestOutcomes(shop, { stage: view.stage.id, reason, usual: possible });
}

/** The stages that this one can send a piece back to, the nearest first; a cure is nothing to go back to. */
export function sendBackStages(shop: Shop, { tray, stage }: BenchView): readonly StageId[] {
  const route = routeOfBatch(shop.registers, tray.batch) ?? [];
  return stagesBefore(route, stage.id)
    .filter((id) => factOf(shop.registers, { register: 'stage', id })?.kind === 'bench')
    .toReversed();
}

/** What a scrap can save, as one tap each: everything, one part only, nothing. */
export function salvageChoices(shop: Shop, { tray, stage }: BenchView): readonly (readonly PartId[])[] {
  const route = routeOfBatch(shop.registers, tray.batch) ?? [];
  const bill = factOf(shop.registers, { register: 'variant', id: tray.variant })?.bill ?? [];
  const parts = partsHeld({ bill, route, stage: stage.id }).filter(
    (id) => factOf(shop.registers, { register: 'part', id })?.sort !== 'consumable',
  );
  if (parts.length === 0) return [[]];
  return [parts, ...(parts.length > 1 ? parts.map((part) => [part]) : []), []];
}
