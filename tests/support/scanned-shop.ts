import { demoShop } from '../../shared/demo/demo-shop.ts';
import { signOf } from '../../src/domain/label/sign-of.ts';
import { symbolText } from '../../src/domain/label/symbol-text.ts';
import { addEvent, emptyShop } from '../../src/domain/shop/shop.ts';
import { parseTrayCode } from '../../src/domain/tray/tray-code.ts';
import type { Maker } from './maker.ts';

/** What the label of a tray of the demo shop says: its sign is the same on every day that the demo is made. */
export function demoLabel(code: string): string {
  const shop = emptyShop();
  for (const event of demoShop({ now: Date.UTC(2026, 2, 20, 12) })) addEvent(shop, event);
  const [parsed, sign] = [parseTrayCode(code), signOf(shop.registers)];
  if (!parsed || !sign) throw new Error(`no label for ${code}`);
  return symbolText({ code: parsed, sign });
}

/** Makes up two trays in the demo that is open, whatever its own trays are at by this hour; their codes. They wait at Kit parts. */
export async function demoTrays(
  { page, at, tap, close, goTo }: Maker,
  pieces = 10,
): Promise<readonly [string, string]> {
  await goTo('#/trays/new');
  await tap('make-variant-plum-copper');
  await at('make-pieces').fill(String(pieces));
  await at('make-count').fill('2');
  await close('make-save');
  await at('made-code').first().waitFor();
  const [first = '', second = ''] = await page.locator('[data-testid=made-code]').allInnerTexts();
  return [first, second];
}
