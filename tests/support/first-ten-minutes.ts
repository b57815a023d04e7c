import type { Maker } from './maker.ts';

/** Codes of the trays that the story makes up: two of ten in beech, two of eight in plum. */
export interface StoryTrays {
  readonly beech: readonly [string, string];
  readonly plum: readonly [string, string];
}

/** A newcomer sets up two woods, a ferrule, a core, two variants and a batch. */
export async function setUpShop({
  page,
  at,
  tap,
  close,
  goTo,
}: Maker): Promise<{ beech: string; plum: string }> {
  await close('new-shop');
  await at('stage-kit-parts').waitFor();
  await goTo('#/set-up/woods');
  await tap('add-wood');
  await tap('catalogue-beech-european');
  await close('wood-save');
  await tap('add-wood');
  await tap('wood-own');
  await at('wood-name').fill('Plum');
  await close('wood-save');
  await goTo('#/set-up/parts');
  for (const [name, sort] of [
    ['Copper ferrule', 'ferrule'],
    ['Awl core', 'core'],
  ] as const) {
    await tap('add-part');
    await at('part-name').fill(name);
    await at('part-sort').locator(`input[value=${sort}]`).check({ force: true });
    await close('part-save');
  }
  await goTo('#/set-up/batches');
  await tap('add-batch');
  await at('batch-name').fill('Spring');
  await close('batch-save');
  await goTo('#/set-up/variants');
  const ids: string[] = [];
  for (const wood of ['European beech', 'Plum']) {
    await tap('add-variant');
    await at('variant-wood').selectOption({ label: wood });
    await at('variant-ferrule').selectOption({ label: 'Copper ferrule' });
    // The core goes in at the first stage, so that a scrap at the boring can save it.
    await tap('bill-add');
    await close('variant-save');
  }
  await goTo('#/trays/new');
  for (const button of await page.locator('[data-testid^=make-variant-]').all()) {
    ids.push((await button.getAttribute('data-testid')) ?? '');
  }
  const [beech = '', plum = ''] = ids;
  return { beech, plum };
}

async function makeTrays(
  { page, at, tap, close, goTo }: Maker,
  { variant, pieces, trays }: { variant: string; pieces: string; trays: string },
) {
  await goTo('#/trays/new');
  await tap(variant);
  await at('make-batch').selectOption({ label: 'Spring' });
  await at('make-pieces').fill(pieces);
  await at('make-count').fill(trays);
  await close('make-save');
  await at('made-code').first().waitFor();
  const codes = await page.locator('[data-testid=made-code]').allInnerTexts();
  await close('made-done');
  return codes;
}

export async function makeUpTrays(
  maker: Maker,
  variants: { beech: string; plum: string },
): Promise<StoryTrays> {
  const [a = '', b = ''] = await makeTrays(maker, { variant: variants.beech, pieces: '10', trays: '2' });
  const [c = '', d = ''] = await makeTrays(maker, { variant: variants.plum, pieces: '8', trays: '2' });
  return { beech: [a, b], plum: [c, d] };
}

/** Kit parts, in bulk: 34 pieces pass, one is mended, one is scrapped. */
export async function kitParts(maker: Maker, { beech, plum }: StoryTrays): Promise<void> {
  const { tap, close, flaw, workOn } = maker;
  await workOn('kit-parts', beech[0]);
  await tap('pass-5');
  await tap('pass', 2);
  await flaw('part-faulty', 'outcome-mended');
  await close('pass-rest');
  for (const code of [beech[1], plum[0]]) {
    await workOn('kit-parts', code);
    await close('pass-rest');
  }
  await workOn('kit-parts', plum[1]);
  await flaw('part-faulty', 'outcome-scrapped');
  await close('pass-rest');
}

/** Cut and bore, piece by piece: 13 pass after two slips are undone; one second, one sent back, one scrapped with its core saved. */
export async function cutAndBore(maker: Maker, { beech, plum }: StoryTrays): Promise<void> {
  const { tap, flaw, workOn, page } = maker;
  await workOn('cut-and-bore', beech[0]);
  await tap('pass', 3);
  await tap('undo');
  await tap('pass', 2);
  await flaw('crack', 'outcome-second');
  await flaw('off-centre', 'outcome-sent-back', 'back-to-kit-parts');
  await workOn('cut-and-bore', plum[0]);
  await tap('pass', 4);
  await tap('flaw-crack');
  await tap('outcome-scrapped');
  await page
    .locator('[data-testid^=save-]:not([data-testid=save-none]):not([data-testid=saved-mark])')
    .first()
    .click();
  await page.waitForTimeout(200);
  await workOn('cut-and-bore', beech[1]);
  await tap('pass', 6);
  await tap('undo');
}

/** Glue up, in bulk: seven pass, a second among them; one is sent back, one lowered. */
export async function glueUp(maker: Maker, { beech, plum }: StoryTrays): Promise<void> {
  const { tap, close, flaw, workOn } = maker;
  await workOn('glue-up', beech[0]);
  await close('pass-rest');
  // The firsts are through: the second that is left is counted now.
  await tap('pass');
  await workOn('glue-up', plum[0]);
  await flaw('glue-failed', 'outcome-sent-back', 'back-to-cut-and-bore');
  await flaw('glue-failed', 'outcome-second');
  await close('pass-rest');
}

/** Two of the five that wait at the boring get a tray of their own; one of the seven in the other tray was lost. */
export async function splitAndRecount(maker: Maker, { beech, plum }: StoryTrays): Promise<void> {
  const { at, close, openTray, tap, page } = maker;
  await openTray(beech[1]);
  await tap('split-open');
  await at('split-spot').locator('input[value=cut-and-bore-waiting-first]').check();
  await at('split-pieces').fill('2');
  await close('split-save');
  await at('split-code').waitFor();
  await page.keyboard.press('Escape');
  await openTray(plum[1]);
  await tap('recount-open');
  await at('recount-counted').fill('6');
  await at('recount-why').locator('input[value=lost]').check({ force: true });
  await close('recount-save');
}
