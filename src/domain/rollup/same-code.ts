import type { Shop } from '../shop/shop.ts';
import type { TrayRecord } from '../shop/trays.ts';
import { tidyCode } from '../tray/tray-code.ts';
import { stagesOfTray } from './waiting.ts';

/**
 * Every tray that carries a code, those with pieces in work first, then the youngest: one as a rule, several where two
 * tablets had one letter before they knew of each other.
 */
export function traysOfCode(shop: Shop, typed: string): readonly TrayRecord[] {
  const code = tidyCode(typed);
  const found = [...shop.trays.values()].filter((tray) => tray.code === code);
  return found.sort((a, b) => Number(inWork(shop, b)) - Number(inWork(shop, a)) || youngerFirst(a, b));
}

/** The codes that two or more trays in work carry, in the order of the codes. */
export function sharedCodes(shop: Shop): readonly string[] {
  const counts = new Map<string, number>();
  for (const { code, tray } of shop.trays.values()) {
    if (shop.positions.working.has(tray)) counts.set(code, (counts.get(code) ?? 0) + 1);
  }
  return [...counts]
    .filter(
      ([code, count]) => count > 1 && traysOfCode(shop, code).filter((tray) => inWork(shop, tray)).length > 1,
    )
    .map(([code]) => code)
    .sort();
}

function inWork(shop: Shop, { tray }: TrayRecord): boolean {
  return stagesOfTray(shop, tray).length > 0;
}

/** The tray that was made last; of one moment the one with the later id, so that all tablets agree. */
export function youngerFirst(a: TrayRecord, b: TrayRecord): number {
  return b.made - a.made || (a.tray < b.tray ? 1 : -1);
}
