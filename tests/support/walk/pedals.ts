import type { Page } from 'playwright-core';
import { keyOf } from './keyboard.ts';
import { type BenchWalker, breathe } from './walker.ts';

/** One who has a foot switch at the bench and nothing else: only what has a key can be done. */
export function pedals(page: Page): BenchWalker {
  let presses = 0;
  const act = async (id: string): Promise<void> => {
    const key = await keyOf(page, id);
    if (key === undefined) throw new Error(`${id} has no key`);
    await page.keyboard.press(key);
    presses += 1;
    await breathe(page, id);
  };
  return {
    page,
    count: () => presses,
    act,
    async passAll(pieces) {
      for (let piece = 0; piece < pieces; piece += 1) await act('pass');
    },
  };
}
