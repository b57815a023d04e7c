import type { StageId, TrayId } from '../../domain/log/ids.ts';
import { stagesOfTray } from '../../domain/rollup/waiting.ts';
import type { Shop } from '../../domain/shop/shop.ts';
import { goTo } from './address.ts';

/** Goes to a tray: where it has pieces at `stage` to work on them there, else to its page. */
export function goToTray(shop: Shop, { tray, stage }: { tray: TrayId; stage: StageId | null }): void {
  if (stage !== null && stagesOfTray(shop, tray).some((at) => at.stage === stage)) goTo('bench', stage, tray);
  else goTo('trays', tray);
}
