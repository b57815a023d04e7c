import { stagesOfTray } from '../../../domain/rollup/waiting.ts';
import { routeOfBatch } from '../../../domain/route/route.ts';
import { factOf } from '../../../domain/shop/registers.ts';
import type { Shop } from '../../../domain/shop/shop.ts';
import type { TrayRecord } from '../../../domain/shop/trays.ts';
import { momentWords } from '../../../words/date-words.ts';
import { nameOf } from '../../../words/names.ts';
import { type TrayLabel, trayLabel } from './label-view.ts';

/** What stands on the route card of a tray. */
export interface CardView {
  readonly label: TrayLabel;
  readonly batch: string;
  readonly stages: readonly CardStage[];
  /** When its counts were true, in words. */
  readonly printed: string;
}

export interface CardStage {
  readonly id: string;
  readonly name: string;
  /** Pieces that stand there when the card is printed. */
  readonly here: number;
  /** Names of the flaws that the stage has buttons for. */
  readonly reasons: readonly string[];
}

export function cardView(
  shop: Shop,
  { tray, now, zone }: { tray: TrayRecord; now: number; zone: string },
): CardView {
  const { registers } = shop;
  const there = stagesOfTray(shop, tray.tray);
  const route = routeOfBatch(registers, tray.batch) ?? [];
  return {
    label: trayLabel(shop, tray),
    batch: nameOf(registers, { register: 'batch', id: tray.batch }),
    stages: route.map((id) => {
      const at = there.find(({ stage }) => stage === id);
      const reasons = factOf(registers, { register: 'stage', id })?.reasons ?? [];
      return {
        id,
        name: nameOf(registers, { register: 'stage', id }),
        here: at ? at.waiting.first + at.waiting.second + at.held.first + at.held.second : 0,
        reasons: reasons.map((reason) => nameOf(registers, { register: 'reason', id: reason })),
      };
    }),
    printed: momentWords(now, zone),
  };
}
