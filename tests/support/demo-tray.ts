import type { Maker } from './maker.ts';

/** Makes up a tray of ten in the demo that is open, whatever its own trays are at by this hour; its code. */
export async function demoTray({ at, close, goTo, tap }: Maker): Promise<string> {
  await goTo('#/trays/new');
  await tap('make-variant-plum-copper');
  await close('make-save');
  return (await at('made-code').first().textContent()) ?? '';
}
