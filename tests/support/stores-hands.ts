import type { Maker } from './maker.ts';

/** What the browser knows of the shop that `setUpStores` makes. */
export interface StoresIds {
  readonly variant: string;
  readonly core: string;
  readonly ferrule: string;
}

/** A newcomer's shop with one wood, a ferrule that the kitting fits and two cores a piece that the glue-up fits. */
export async function setUpStores(hands: Maker): Promise<StoresIds> {
  const { page, at, tap, close, goTo } = hands;
  await close('new-shop');
  await at('stage-kit-parts').waitFor();
  await goTo('#/set-up/woods');
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
    if (sort === 'core') await at('part-low-mark').fill('60');
    await close('part-save');
  }
  await goTo('#/set-up/batches');
  await tap('add-batch');
  await at('batch-name').fill('Spring');
  await close('batch-save');
  await goTo('#/set-up/variants');
  await tap('add-variant');
  await at('variant-wood').selectOption({ label: 'Plum' });
  await at('variant-ferrule').selectOption({ label: 'Copper ferrule' });
  await tap('bill-add');
  const [core = ''] = await page
    .locator('input[data-testid^=bill-each-]')
    .evaluateAll((fields) =>
      fields.map((field) => field.getAttribute('data-testid')?.slice('bill-each-'.length) ?? '').slice(-1),
    );
  await at(`bill-each-${core}`).fill('2');
  await at(`bill-stage-${core}`).selectOption({ label: 'Glue up' });
  await page.locator('select[data-testid^=bill-stage-]').first().selectOption({ label: 'Kit parts' });
  await close('variant-save');
  await goTo('#/trays/new');
  const variant =
    (await page.locator('[data-testid^=make-variant-]').first().getAttribute('data-testid')) ?? '';
  await goTo('#/stores');
  const ids = await page
    .locator('[data-testid^=stores-part-]')
    .evaluateAll((links) =>
      links.map((link) => link.getAttribute('data-testid')?.slice('stores-part-'.length) ?? ''),
    );
  return { variant, core, ferrule: ids.find((id) => id !== core) ?? '' };
}

/** Types a delivery on the pad. */
export async function receive(hands: Maker, part: string, pieces: string): Promise<void> {
  await hands.tap(`stores-${part}-receive`);
  for (const digit of pieces) {
    await hands.at('receive-pieces').getByRole('button', { name: digit, exact: true }).click();
    await hands.page.waitForTimeout(140);
  }
  await hands.close('receive-save');
}

/** Every count on Stores, as the table of the test has it. */
export async function expectStores(
  { goTo, expectFigures }: Maker,
  { core, ferrule, variant }: StoresIds,
  row: { core: string; ferrule: string; start: string },
): Promise<void> {
  await goTo('#/stores');
  const figures = (part: string, counts: string) => {
    const [onHand = '', allotted = '', free = ''] = counts.split(' ');
    return {
      [`stores-${part}-on-hand`]: onHand,
      [`stores-${part}-allotted`]: allotted,
      [`stores-${part}-free`]: free,
    };
  };
  const its = variant.slice('make-variant-'.length);
  await expectFigures({
    ...figures(core, row.core),
    ...figures(ferrule, row.ferrule),
    [`start-${its}`]: row.start,
  });
}
