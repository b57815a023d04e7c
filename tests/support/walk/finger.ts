import type { Locator, Page } from 'playwright-core';
import { at, breathe, idOf, placeLink, type Walker } from './walker.ts';

/**
 * One who has a finger and nothing else. A sign typed on the system's keyboard is a tap; scrolling is none.
 */
export function finger(page: Page): Walker {
  let taps = 0;
  const press = async (target: Locator): Promise<void> => {
    await target.waitFor();
    await page.waitForTimeout(160);
    const id = await idOf(target);
    await target.tap();
    taps += 1;
    await breathe(page, id);
  };
  const act = (id: string) => press(at(page, id));
  return {
    page,
    count: () => taps,
    go: (place) => press(placeLink(page, place)),
    press,
    pick: press,
    act,
    save: act,
    async type(field, text) {
      await field.tap();
      const standing = await field.inputValue();
      const isTaken = await field.evaluate(isAllMarked);
      taps += 1 + text.replaceAll('-', '').length + (isTaken ? 0 : standing.length);
      await field.fill(text);
    },
    async passAll(pieces) {
      if ((await at(page, 'pass-rest').count()) > 0) return act('pass-rest');
      const left = at(page, 'stage-left').locator('.figures');
      for (let piece = pieces - 1; piece >= 0; piece -= 1) {
        await act('pass');
        // One who taps sees each piece counted.
        await left.filter({ hasText: new RegExp(`^${piece}$`) }).waitFor();
      }
    },
  };
}

/** Whether a sign that is typed now takes the place of all that stands in the field. Runs in the page. */
function isAllMarked(field: HTMLElement | SVGElement): boolean {
  if (!(field instanceof HTMLInputElement) || field.type !== 'text') return false;
  return field.value.length > 0 && field.selectionStart === 0 && field.selectionEnd === field.value.length;
}
