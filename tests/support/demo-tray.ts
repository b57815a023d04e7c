import type { Maker } from './maker.ts';

/** Opens the demo and makes up a tray of ten, whatever the demo's own trays are at by this hour; its code. */
export async function demoTray({ at, close, goTo, tap }: Maker): Promise<string> {
  await close('open-demo');
  await at('stage-sand').waitFor();
  await goTo('#/trays/new');
  await tap('make-variant-plum-copper');
  await close('make-save');
  return (await at('made-code').first().textContent()) ?? '';
}
