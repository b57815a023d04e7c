// @vitest-environment happy-dom
import { act, screen, waitFor, within } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { address, goTo } from '../../../src/screens/parts/address.ts';
import { batch, part, reason, stage, variant } from '../../support/workshop.ts';
import { choose, errorAt, type Mounted, press, settle, type } from '../set-up/mount.tsx';
import { answered, planOfShop } from './open-plan.tsx';

beforeEach(() => goTo('plan'));

const openCost = async () => {
  goTo('plan', 'cost');
  await screen.findByTestId('plan-cost');
  await answered();
  await screen.findByTestId('cost-per-good');
  await settle();
};

/** Twenty of ash turned and sanded piece by piece, a minute each; the last blown at the sanding. */
async function workedShop(): Promise<Mounted> {
  const mounted = await planOfShop();
  const { session, hands } = mounted;
  const pieces = 20;
  await session.act({
    kind: 'make-trays',
    variant: variant['ash-copper'],
    batch: batch.spring,
    pieces,
    trays: 1,
  });
  const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
  if (!tray) throw new Error('no tray was made up');
  for (const at of [stage.turn, stage.sand]) {
    session.enterStage(at);
    for (let shown = pieces; shown > 0; shown -= 1) {
      hands.pass(60_000);
      const spot = { tray, stage: at, at: 'waiting', grade: 'first', shown } as const;
      const isBlown = at === stage.sand && shown === 1;
      await session.act(
        isBlown
          ? {
              kind: 'flaw',
              spot,
              pieces: 1,
              reasons: [reason.blown],
              outcome: { kind: 'scrapped', saved: [] },
            }
          : { kind: 'pass', spot, pieces: 1 },
      );
    }
  }
  return mounted;
}

/** Says what parts and an hour cost: a ferrule two, an hour sixty. */
async function priced(session: Session): Promise<void> {
  const { registers } = session.view.value.shop;
  const shop = factOf(registers, { register: 'shop', id: 'shop' });
  if (!shop) throw new Error('no shop');
  const common = { sort: 'ferrule', retired: false } as const;
  await act(async () => {
    await session.act({
      kind: 'set',
      set: { register: 'shop', id: 'shop', value: { ...shop, hourCost: 6000 } },
    });
    for (const [name, id] of [
      ['blank', part['ash-blank']],
      ['core', part.core],
      ['ferrule', part['copper-ferrule']],
    ] as const)
      await session.act({
        kind: 'set',
        set: { register: 'part', id, value: { ...common, name, cost: 20_000 } },
      });
  });
}

test('what is not known is named, and leads to where it is said', async () => {
  await workedShop();
  await openCost();
  expect(screen.getByTestId('cost-of-ash-copper').textContent).toBe('not known');
  const missing = screen.getByTestId('cost-missing').textContent ?? '';
  expect(missing).toContain('What an hour of work costs.');
  expect(missing).toContain('What one costs:');
  expect(screen.getByTestId('price-of-ash-copper').textContent).toBe('not known');
  await press('cost-to-rate');
  await waitFor(() => expect(address.value).toMatchObject({ place: 'set-up', rest: ['tablet'] }));
});

test('a good piece bears its parts, its work and what was scrapped, and its price is held against it', async () => {
  const { session } = await workedShop();
  await priced(session);
  await openCost();
  expect(screen.queryByTestId('cost-missing')).toBeNull();
  // By hand: a blank, two cores and a ferrule are 8.00; turning and sanding a minute each are 2.00 at 60 an hour; what was
  // scrapped, 2.00 of work (its route fits no part before the sanding), is borne by 19: 0.11.
  const cells = (id: string) =>
    [...(screen.getByTestId(id).closest('tr')?.children ?? [])].map((each) => each.textContent);
  expect(cells('cost-of-ash-copper').slice(1)).toEqual(['10.11', '8.00', '2.00', '0.00', '0.11', '0.00']);
  expect(cells('price-of-ash-copper').slice(1)).toEqual(['32.00', '68 %', 'enough', '16.85']);
  type('cost-margin', '90');
  expect(cells('price-of-ash-copper').slice(3)).toEqual(['below the margin', '101.10']);
  type('cost-margin', '-1');
  expect(errorAt('cost-margin')).toBe('Whole per cent from 0 to 99.');
  const losses = within(screen.getByTestId('cost-losses'));
  expect(losses.getByRole('row', { name: /Sand/ }).textContent).toMatch(/1.*2\.00$/);
});

test('a blemished piece is judged from where it stands on', async () => {
  const { session } = await workedShop();
  await priced(session);
  await openCost();
  const said = () => screen.getByTestId('second-answer').textContent ?? '';
  expect(said()).toMatch(/^Finish it: finishing costs \d+\.\d\d more/);
  choose('second-stage', 'Sand');
  // A ferrule and a minute: 3.00.
  expect(said()).toMatch(/^Finish it: finishing costs 3\.00 more/);
  type('second-saves', '40');
  expect(said()).toMatch(/^Scrap it/);
  type('second-saves', 'much');
  expect(errorAt('second-saves')).toBe('A sum is a number such as 24 or 24.50.');
});

test('a batch of which nothing is finished yet is told so', async () => {
  const { session } = await planOfShop();
  await priced(session);
  await openCost();
  expect(screen.getByTestId('cost-of-ash-copper').textContent).toBe('none finished yet');
  expect(screen.getByText('Nothing was lost.')).toBeDefined();
});
