// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import type { HoldFact, MixFact } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { MixPage } from '../../../src/screens/bench/mix/mix-page.tsx';
import { mixPlan, mixView } from '../../../src/screens/bench/mix/mix-view.ts';
import { address } from '../../../src/screens/parts/address.ts';
import { countDown } from '../../../src/words/mix-words.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { stage } from '../../support/workshop.ts';
import { errorAt, type Mounted, mount, press, type, typed } from '../set-up/mount.tsx';

const minute = 60_000;
const glue: MixFact = {
  ...{ kind: 'adhesive', gramsEach: 150, resin: 200, hardener: 100, by: 'weight', densities: null },
  ...{ wastePercent: 0, potMinutes: 30, secondsEach: 90 },
};
const coat: MixFact = {
  ...{ kind: 'finish', mlEach: 120, wastePercent: 20, recoatFrom: 240, recoatUntil: 1440 },
};

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] });
  address.value = { place: 'bench', rest: ['mix', stage.glue] };
});
afterEach(() => void vi.useRealTimers());

/** A page of the hold, which mixes this. */
async function mixing(mix: MixFact | null): Promise<Mounted> {
  const mounted = await mount(<MixPage />);
  await say(mounted.session, { mix });
  return mounted;
}

async function say(session: Session, change: Partial<HoldFact>): Promise<void> {
  const fact = factOf(session.view.value.shop.registers, { register: 'stage', id: stage.glue });
  if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
  await act(async () => {
    await session.act({
      kind: 'set',
      set: { register: 'stage', id: stage.glue, value: { ...fact, ...change } },
    });
  });
}

const textOf = (testId: string) => screen.getByTestId(testId).textContent;
const there = (testId: string) => screen.queryByTestId(testId) !== null;

describe('the page of what is mixed', () => {
  test('begins with the places that are free, and weighs resin and hardener', async () => {
    await mixing(glue);
    expect(typed('mix-pieces')).toBe('8');
    // By hand: 8 × 1.5 g = 12 g, two parts to one.
    expect([textOf('resin-1'), textOf('hardener-1')]).toEqual(['8.0 g', '4.0 g']);
  });

  test('parts a round into as many mixes as the pot life allows', async () => {
    await mixing(glue);
    type('mix-pieces', '24');
    // By hand: 30 min at 90 s are 20 pieces: two mixes of 12, each 18 g of 2 : 1.
    expect(textOf('mix-1')).toContain('Mixes 1 to 2: 12 pieces each');
    expect([textOf('resin-1'), textOf('hardener-1')]).toEqual(['12.0 g', '6.0 g']);
    type('mix-pieces', '41');
    // By hand: 14 and 14 and 13, of 21 g and 19.5 g.
    expect([textOf('resin-1'), textOf('hardener-1')]).toEqual(['14.0 g', '7.0 g']);
    expect(textOf('mix-3')).toContain('Mix 3: 13 pieces');
    expect([textOf('resin-3'), textOf('hardener-3')]).toEqual(['13.0 g', '6.5 g']);
    type('mix-pieces', '24');
    type('mix-seconds', '1801');
    expect(there('mix-too-slow')).toBe(true);
    expect(there('mix-1')).toBe(false);
    type('mix-seconds', '');
    // By hand: all in one mix, 36 g.
    expect([textOf('resin-1'), textOf('hardener-1')]).toEqual(['24.0 g', '12.0 g']);
    // A thumb with glue on it counts by two buttons, and never below one.
    await press('mix-more');
    expect(typed('mix-pieces')).toBe('25');
    type('mix-pieces', '2');
    await press('mix-fewer');
    await press('mix-fewer');
    expect(typed('mix-pieces')).toBe('1');
    type('mix-pieces', 'many');
    expect(errorAt('mix-pieces')).toBe('Whole pieces, 1 to 9999.');
    expect(there('resin-1')).toBe(false);
  });

  test('counts the pot life down from a tap, and goes on when the page is left', async () => {
    const { hands, app, session } = await mixing(glue);
    expect(there('pot-left')).toBe(false);
    await press('pot-begin');
    expect(textOf('pot-left')).toBe('30:00 left');
    expect(app.preferences.pot.value).toEqual({ stage: stage.glue, ends: session.now() + 30 * minute });
    hands.pass(29 * minute + 1000);
    act(() => void vi.advanceTimersByTime(1000));
    expect(textOf('pot-left')).toBe('0:59 left');
    hands.pass(59_000);
    act(() => void vi.advanceTimersByTime(1000));
    expect(textOf('pot-left')).toBe('over');
    await press('pot-clear');
    expect(there('pot-left')).toBe(false);
  });

  test('tells the finish of a coat, and between when and when the next goes on', async () => {
    await mixing(coat);
    // By hand: 8 × 1.2 ml ÷ 0.8. It is nine o'clock.
    expect(textOf('coat-ml')).toBe('12.0 ml');
    expect(textOf('mix-recoat')).toContain('from 13:00 until Tue');
    expect(document.body.textContent).toContain('Rags with oil finishes can catch fire');
  });

  test('says where a ratio by volume cannot be weighed', async () => {
    await mixing({ ...glue, by: 'volume' });
    expect(textOf('mix-1')).toContain('2 : 1 parts by volume');
    expect(there('resin-1')).toBe(false);
  });

  test('leads to Set-up where nothing is said to be mixed', async () => {
    await mixing(null);
    expect(there('mix-pieces')).toBe(false);
    expect(document.body.textContent).toContain('Nothing to mix here');
  });
});

test('a round is what waits, as far as there is room, and the rounds are those of all that waits', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 20);
  shop.pass(tray, 'bore', { pieces: 20 });
  expect(mixView(shop.shop, stage.glue)).toMatchObject({
    ...{ waiting: 20, free: 8, pieces: 8, rounds: { rounds: 3, each: 8, last: 4 } },
  });
  shop.load(tray, 'glue', { pieces: 5 });
  expect(mixView(shop.shop, stage.glue)).toMatchObject({ waiting: 15, free: 3, pieces: 3 });
  expect(mixView(shop.shop, stage.bore)).toBeUndefined();
});

test('of a plan all mixes together are for all the pieces', () => {
  for (let pieces = 1; pieces <= 60; pieces += 1) {
    const plan = mixPlan(glue, { pieces, secondsEach: 200 });
    if (plan.kind !== 'lines') throw new Error('a piece is done in time');
    expect(plan.lines.reduce((sum, line) => sum + line.mixes * line.pieces, 0)).toBe(pieces);
    // 30 min at 200 s are nine pieces.
    expect(plan.lines.every((line) => line.pieces <= 9)).toBe(true);
  }
});

test.each([
  [0, '0:00'],
  [1, '0:01'],
  [59_001, '1:00'],
  [30 * minute, '30:00'],
])('%i ms left are told as %s', (ms, text) => {
  expect(countDown(ms)).toBe(text);
});
