// @vitest-environment happy-dom
import { screen, waitFor, within } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { dayAfter } from '../../../src/domain/log/zone.ts';
import { address, goTo } from '../../../src/screens/parts/address.ts';
import { batch, part, person, route, stage, variant } from '../../support/workshop.ts';
import { choose, errorAt, press, settle, type } from '../set-up/mount.tsx';
import { answered, planOfShop, spring } from './open-plan.tsx';

beforeEach(() => goTo('plan'));

const openConstraint = async () => {
  goTo('plan', 'constraint');
  await screen.findByTestId('plan-constraint');
  await answered();
  await screen.findByTestId('constraint-loads');
  await settle();
};

/** Edda works eight hours each day of the week. */
async function withHours(session: Session): Promise<void> {
  const usual = { from: 480, to: 960, breakMinutes: 0 };
  const value = { name: 'Edda', retired: false, week: Array.from({ length: 7 }, () => usual) };
  await session.act({ kind: 'set', set: { register: 'person', id: person.edda, value } });
}

/** A ferrule, a core and a blank cost two each. */
async function priced(session: Session): Promise<void> {
  for (const [name, id] of [
    ['blank', part['ash-blank']],
    ['core', part.core],
    ['ferrule', part['copper-ferrule']],
  ] as const)
    await session.act({
      kind: 'set',
      set: { register: 'part', id, value: { name, sort: 'ferrule', retired: false, cost: 20_000 } },
    });
}

/** So many of ash turned and sanded, a minute each. */
async function timed(shop: Awaited<ReturnType<typeof planOfShop>>, pieces: number): Promise<void> {
  const { session, hands } = shop;
  const ash = { variant: variant['ash-copper'], batch: batch.spring };
  await session.act({ kind: 'make-trays', ...ash, pieces, trays: 1 });
  const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
  if (!tray) throw new Error('no tray was made up');
  for (const at of [stage.turn, stage.sand]) {
    session.enterStage(at);
    for (let shown = pieces; shown > 0; shown -= 1) {
      hands.pass(60_000);
      const spot = { tray, stage: at, at: 'waiting', grade: 'first', shown } as const;
      await session.act({ kind: 'pass', spot, pieces: 1 });
    }
  }
}

const sayHours = async (session: Session, wanted: number) => {
  const due = dayAfter(session.today(), 1);
  const value = { ...spring, wanted: [{ variant: variant['ash-copper'], good: wanted }], due };
  await session.act({ kind: 'set', set: { register: 'batch', id: batch.spring, value } });
};

test('without hours nothing is held against anything, and the way to them is shown', async () => {
  await planOfShop();
  await openConstraint();
  expect(screen.getByTestId('constraint-nothing').textContent).toMatch(/^Nobody’s hours are said/);
  expect(screen.getByTestId('cost-missing').textContent).toContain('What one costs:');
  expect(screen.getByTestId('mix-answer').textContent).toMatch(/^Not known: hours of people/);
  await press('constraint-to-people');
  await waitFor(() => expect(address.value).toMatchObject({ place: 'set-up', rest: ['people'] }));
});

test('what holds the shop back is said, with what is behind it and what an hour of it earns', async () => {
  const shop = await planOfShop();
  const { session } = shop;
  await timed(shop, 30);
  await priced(session);
  await withHours(session);
  // 16 hours until the due day; 30 are finished, 300 are wanted at two minutes each and a little more for losses.
  await sayHours(session, 300);
  await openConstraint();
  expect(screen.getByTestId('constraint-said').textContent).toMatch(
    /^Most loaded: All hands together, with \d+ % of what there is\. Of hands, most go to (Turn|Sand) \(\d+ %\)\. All that is wanted fits\.$/,
  );
  const load = Number.parseInt(screen.getByTestId('load-hands').textContent ?? '', 10);
  expect(load).toBeGreaterThanOrEqual(Math.floor((100 * 270 * 2) / 960));
  expect(load).toBeLessThan(75);
  const behind = within(screen.getByTestId('constraint-behind'));
  expect(behind.getAllByRole('row')).toHaveLength(4);
  expect(screen.queryByTestId('cost-missing')).toBeNull();
  // Hardly a piece is lost: 32.00 less the ferrule of the sanding at 2.00, for some two minutes, is 900 an hour.
  const earns = Number(screen.getByTestId('earns-ash-copper').textContent);
  expect(earns).toBeGreaterThan(800);
  expect(earns).toBeLessThan(905);
});

test('a mix is made up for the hours that the maker chooses', async () => {
  const shop = await planOfShop();
  await timed(shop, 30);
  await priced(shop.session);
  await withHours(shop.session);
  await sayHours(shop.session, 300);
  await openConstraint();
  const made = () => Number(/^(\d+) pieces/.exec(screen.getByTestId('mix-answer').textContent ?? '')?.[1]);
  const ofWeek = made();
  // 270 firsts are still wanted, and a week has 56 hours: no more than what can be sold is made.
  expect(ofWeek).toBeGreaterThanOrEqual(270);
  expect(ofWeek).toBeLessThan(300);
  choose('mix-time', 'hours of my own');
  type('mix-own', '2');
  // Two hours have room for sixty pieces of two minutes at most.
  await waitFor(() => expect(made()).toBeLessThanOrEqual(60), { timeout: 20_000 });
  expect(made()).toBeGreaterThan(40);
  type('mix-own', 'some');
  expect(errorAt('mix-own')).toBe('Whole hours from 1 to 10,000.');
});

test('clamps that are too few hold the shop back, by rounds', async () => {
  const { session } = await planOfShop({ part: { route: route.haft as typeof spring.route } });
  await withHours(session);
  const due = dayAfter(session.today(), 1);
  const wanted = [{ variant: variant['ash-copper'], good: 12 }];
  const value = { ...spring, route: route.haft, wanted, due };
  await session.act({ kind: 'set', set: { register: 'batch', id: batch.spring, value } });
  await openConstraint();
  expect(screen.getByTestId('constraint-said').textContent).toMatch(
    /^(What holds you back|Most loaded): Places of Glue/,
  );
  expect(screen.getByTestId(`constraint-rounds-${stage.glue}`).textContent).toMatch(
    /^Glue: \d+ pieces are \d+ rounds of 8; until then \d+ could cure there/,
  );
  expect(screen.getByTestId('load-hands').textContent).toBe('not known');
});
