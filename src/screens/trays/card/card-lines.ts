import { partsHeld } from '../../../domain/command/parts.ts';
import type { ReasonId, StageId } from '../../../domain/log/ids.ts';
import { stagesOfTray } from '../../../domain/rollup/waiting.ts';
import { routeOfBatch, stagesBefore } from '../../../domain/route/route.ts';
import { factOf, factsOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { cardWords as words } from '../../../words/card-words.ts';
import { nameOf } from '../../../words/names.ts';
import type { CardOutcome } from './card-draft.ts';

/** One thing to choose, as a list shows it. */
interface Option<Value extends string> {
  readonly value: Value;
  readonly label: string;
}

/** One stage of the form: what can be entered there. */
export interface CardStage {
  readonly stage: StageId;
  readonly name: string;
  readonly here: number;
  /** The flaws of its buttons first, then the other ones of the shop. */
  readonly reasons: readonly Option<ReasonId>[];
  readonly outcomes: readonly Option<CardOutcome>[];
}

/** The stages of a tray's route, in order. */
export function cardStages(shop: Shop, tray: TrayRecord): readonly CardStage[] {
  const { registers } = shop;
  const route = routeOfBatch(registers, tray.batch) ?? [];
  const there = stagesOfTray(shop, tray.tray);
  const live = factsOf(registers, 'reason').filter(({ fact }) => !fact.retired);
  return route.map((stage) => {
    const at = there.find((each) => each.stage === stage);
    const own = factOf(registers, { register: 'stage', id: stage })?.reasons ?? [];
    const reasons = [...new Set([...own, ...live.map(({ id }) => id)])];
    return {
      stage,
      name: nameOf(registers, { register: 'stage', id: stage }),
      here: at ? at.waiting.first + at.waiting.second + at.held.first + at.held.second : 0,
      reasons: reasons.map((value) => ({
        value,
        label: nameOf(registers, { register: 'reason', id: value }),
      })),
      outcomes: outcomesAt(shop, { tray, stage }),
    };
  });
}

/** The parts that a scrap at a stage could save: what is used up with it is not among them. */
export function salvageAt(shop: Shop, { tray, stage }: { tray: TrayRecord; stage: StageId }) {
  const { registers } = shop;
  const route = routeOfBatch(registers, tray.batch) ?? [];
  const bill = factOf(registers, { register: 'variant', id: tray.variant })?.bill ?? [];
  return partsHeld({ bill, route, stage }).filter(
    (id) => factOf(registers, { register: 'part', id })?.sort !== 'consumable',
  );
}

function outcomesAt(
  shop: Shop,
  { tray, stage }: { tray: TrayRecord; stage: StageId },
): readonly Option<CardOutcome>[] {
  const route = routeOfBatch(shop.registers, tray.batch) ?? [];
  const kinds = ['scrapped', 'scrapped-saved', 'second', 'mended'] as const;
  const canSave = salvageAt(shop, { tray, stage }).length > 0;
  return [
    ...kinds
      .filter((kind) => kind !== 'scrapped-saved' || canSave)
      .map((value) => ({ value, label: words.outcomes[value] })),
    ...stagesBefore(route, stage).map(
      (to): Option<CardOutcome> => ({
        value: `back:${to}`,
        label: words.backTo(nameOf(shop.registers, { register: 'stage', id: to })),
      }),
    ),
  ];
}
