import type { Command, Spot } from '../../../domain/command/command.ts';
import type { ReasonId, StageId, TrayId, VariantId } from '../../../domain/log/ids.ts';
import { finishedSeconds } from '../../../domain/rollup/finished-seconds.ts';
import { blemishesOf, shelfRow } from '../../../domain/rollup/shelf-stock.ts';
import { stagesOfTray } from '../../../domain/rollup/waiting.ts';
import type { Shop } from '../../../domain/shop/shop.ts';

/** Seconds that can be raised together: at one stage of a tray, or finished ones on the shelf. */
export type Seconds =
  | { readonly kind: 'at-stage'; readonly spot: Omit<Spot, 'grade'> }
  | {
      readonly kind: 'finished';
      readonly variant: VariantId;
      /** null is of any tray. */
      readonly tray: TrayId | null;
      readonly shown: number;
    };

/** Those of a tray, at one stage where it is named, else at every stage and finished, in the order of places. */
export function secondsOfTray(shop: Shop, tray: TrayId, stage?: StageId): readonly Seconds[] {
  const atStages = stagesOfTray(shop, tray)
    .filter((each) => stage === undefined || each.stage === stage)
    .flatMap(({ stage: at, waiting, held }): readonly Seconds[] => [
      { kind: 'at-stage', spot: { tray, stage: at, at: 'waiting', shown: waiting.second } },
      { kind: 'at-stage', spot: { tray, stage: at, at: 'held', shown: held.second } },
    ]);
  const record = shop.trays.get(tray);
  const finished = stage === undefined && record ? finishedOf(shop, record.variant, tray) : [];
  return [...atStages, ...finished].filter((seconds) => shownOf(seconds) > 0);
}

/** Finished seconds of a variant that stand on the shelf. */
export function secondsOnShelf(shop: Shop, variant: VariantId): readonly Seconds[] {
  return finishedOf(shop, variant, null).filter((seconds) => shownOf(seconds) > 0);
}

function finishedOf(shop: Shop, variant: VariantId, tray: TrayId | null): readonly Seconds[] {
  const finished = finishedSeconds(shop, variant)
    .filter(({ of }) => tray === null || of.tray === tray)
    .reduce((sum, { pieces }) => sum + pieces, 0);
  const onShelf = shelfRow(shop, { variant, grade: 'second' }).at.shelf;
  return [{ kind: 'finished', variant, tray, shown: Math.min(finished, onShelf) }];
}

export function shownOf(seconds: Seconds): number {
  return seconds.kind === 'finished' ? seconds.shown : seconds.spot.shown;
}

/** The same for the same seconds. */
export function secondsKey(seconds: Seconds): string {
  return seconds.kind === 'finished' ? 'finished' : `${seconds.spot.stage}-${seconds.spot.at}`;
}

/** What can be gone: the blemishes that seconds of the variant have, the most frequent first. */
export function blemishesToClear(shop: Shop, seconds: Seconds): readonly ReasonId[] {
  const variant = seconds.kind === 'finished' ? seconds.variant : shop.trays.get(seconds.spot.tray)?.variant;
  return variant === undefined ? [] : blemishesOf(shop, variant).map(({ reason }) => reason);
}

export function raiseCommand(
  seconds: Seconds,
  { pieces, gone }: { readonly pieces: number; readonly gone: readonly ReasonId[] },
): Command {
  if (seconds.kind === 'at-stage') return { kind: 'raise', spot: seconds.spot, pieces, gone };
  const { variant, tray } = seconds;
  return { kind: 'raise-finished', variant, tray, pieces, gone };
}
