// @vitest-environment happy-dom
import { screen, waitFor, within } from '@testing-library/preact';
import { beforeEach, expect, test } from 'vitest';
import { goTo } from '../../../src/screens/parts/address.ts';
import { scrapped } from '../../support/a-shop.ts';
import { batch, part, reason, route, stage, variant } from '../../support/workshop.ts';
import { choose, errorAt, type Mounted, settle, type } from '../set-up/mount.tsx';
import { answered, planOfShop, spring } from './open-plan.tsx';

beforeEach(() => goTo('plan'));

const openReview = async () => {
  goTo('plan', 'review');
  await screen.findByTestId('plan-review');
  await answered();
  await screen.findByTestId('review-planned');
  await settle();
};
const cell = (id: string) => screen.getByTestId(id).textContent;

/** Twenty of ash turned and sanded piece by piece, a minute each; the last blown at the sanding. */
async function worked(): Promise<Mounted> {
  const mounted = await planOfShop();
  const { session, hands } = mounted;
  const pieces = 20;
  const ash = { variant: variant['ash-copper'], batch: batch.spring };
  await session.act({ kind: 'make-trays', ...ash, pieces, trays: 1 });
  const tray = [...session.view.value.shop.trays.values()].at(-1)?.tray;
  if (!tray) throw new Error('no tray was made up');
  for (const at of [stage.turn, stage.sand]) {
    session.enterStage(at);
    for (let shown = pieces; shown > 0; shown -= 1) {
      hands.pass(60_000);
      const spot = { tray, stage: at, at: 'waiting', grade: 'first', shown } as const;
      const isBlown = at === stage.sand && shown === 1;
      const blown = { reasons: [reason.blown], outcome: scrapped() };
      await session.act(
        isBlown ? { kind: 'flaw', spot, pieces: 1, ...blown } : { kind: 'pass', spot, pieces: 1 },
      );
    }
  }
  return mounted;
}

test('planned is held against actual, and what nobody has planned is said to be so', async () => {
  await worked();
  await openReview();
  expect([cell('planned-started-1'), cell('planned-started-2')]).toEqual(['no plan kept', '20']);
  expect([cell('planned-firsts-1'), cell('planned-firsts-2')]).toEqual(['12', '19']);
  expect(cell('planned-scrapped-2')).toBe('1');
  expect(cell('planned-yield-2')).toBe('95%');
  // Forty taps of a minute each.
  expect(cell('planned-hours-2')).toBe('40 min');
  expect(cell('planned-cost-2')).toBe('not known');
  expect(cell('planned-done-1')).toBe('Mon, 30 Mar 2026');
  expect(cell('planned-done-2')).toMatch(/ (late|early)$/);
  // Nobody has said what an hour costs: losses stand by pieces.
  expect(screen.getByTestId('review-losses').textContent).toContain('most pieces');
  expect(within(screen.getByTestId('losses')).getByRole('row', { name: /Sand/ }).textContent).toContain(
    'not known',
  );
});

test('a plan that was kept is held against what came of it', async () => {
  const { session } = await worked();
  const plan = {
    ...{ day: '2026-03-02' as never, started: 16, firsts: 13, comesOut: 15, minutes: 50, cost: 12_345 },
    done: '2026-03-27' as never,
  };
  await session.act({
    kind: 'set',
    set: { register: 'batch', id: batch.spring, value: { ...spring, plan } },
  });
  await openReview();
  const planned = (row: string) => [cell(`planned-${row}-1`), cell(`planned-${row}-2`)];
  expect(planned('started')).toEqual(['16', '20']);
  expect(planned('expectedFirsts')).toEqual(['13', '19']);
  expect(planned('seconds')).toEqual(['2', '0']);
  expect(planned('scrapped')).toEqual(['1', '1']);
  // 15 of 16.
  expect(planned('yield')).toEqual(['93.8%', '95%']);
  expect(planned('hours')).toEqual(['50 min', '40 min']);
  expect(planned('cost')[0]).toBe('123.45');
  expect(cell('planned-expected-1')).toBe('Fri, 27 Mar 2026');
});

test('the next plan takes over rates and times, and how large it may be follows from the hours', async () => {
  await worked();
  await openReview();
  const key = `next-${batch.spring}/${variant['ash-copper']}`;
  const starts = Number(cell(`${key}-5`));
  // Twelve firsts of which hardly one is lost: some more than twelve.
  expect(starts).toBeGreaterThan(12);
  expect(starts).toBeLessThan(17);
  expect(cell(`${key}-3`)).toMatch(/^2\.\d min$/);
  type('fits-hours', '10');
  type('fits-weeks', '2');
  // 1200 minutes at two and a little for a piece.
  const fits = Number(/^About (\d+) pieces/.exec(cell('fits-answer') ?? '')?.[1]);
  expect(fits).toBeGreaterThan(500);
  expect(fits).toBeLessThanOrEqual(600);
  type('fits-weeks', 'many');
  expect(errorAt('fits-weeks')).toBe('A whole number from 1 to 1,000.');
  expect(cell('fits-answer')).toBe('');
});

test('batches that are put away are compared too, and chosen', async () => {
  const { session } = await worked();
  const value = { name: 'Autumn', route: route.short, wanted: [], due: null, retired: true };
  await session.act({ kind: 'set', set: { register: 'batch', id: batch.autumn, value } });
  await session.act({
    kind: 'set',
    set: { register: 'batch', id: batch.spring, value: { ...spring, retired: true } },
  });
  await openReview();
  choose('review-batch', 'Spring (put away)');
  await waitFor(() => expect(cell('planned-firsts-2')).toBe('19'), { timeout: 20_000 });
  const rows = within(screen.getByTestId('compare')).getAllByRole('row');
  expect(rows.map((row) => row.textContent)).toEqual([
    expect.stringMatching(/^Batch/),
    expect.stringMatching(/^Autumn \(put away\)/),
    expect.stringMatching(/^Spring \(put away\)/),
  ]);
  choose('review-batch', 'Autumn (put away)');
  await waitFor(() => expect(cell('planned-done-2')).toBe('not begun'));
});

test('money is told where it is known, and paper has the same tables', async () => {
  const { session } = await worked();
  const { registers } = session.view.value.shop;
  const shop = registers.get('shop/shop')?.set;
  if (shop?.register !== 'shop') throw new Error('no shop');
  await session.act({ kind: 'set', set: { ...shop, value: { ...shop.value, hourCost: 6000 } } });
  for (const [name, id] of [
    ['blank', part['ash-blank']],
    ['core', part.core],
    ['ferrule', part['copper-ferrule']],
  ] as const)
    await session.act({
      kind: 'set',
      set: { register: 'part', id, value: { name, sort: 'ferrule', retired: false, cost: 20_000 } },
    });
  await openReview();
  // As on the page of costs: 10.11 for each of nineteen, 192.00 in all.
  // A robust mean of even minutes is a hair more than a minute.
  expect(Number(cell('planned-cost-2'))).toBeCloseTo(192, 1);
  expect(cell(`compare-${batch.spring}-7`)).toBe('10.11');
  expect(screen.getByTestId('review-losses').textContent).toContain('most money');
  const paper = document.querySelector('.print-root .review-sheet');
  expect(paper?.querySelectorAll('table')).toHaveLength(4);
  expect(paper?.textContent).toContain(cell('planned-cost-2'));
});
