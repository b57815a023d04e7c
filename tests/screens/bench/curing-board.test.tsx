// @vitest-environment happy-dom
import { act, screen } from '@testing-library/preact';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Session } from '../../../src/app/session.ts';
import { piecesAt } from '../../../src/domain/command/draw.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { CuringPage } from '../../../src/screens/bench/curing/curing-page.tsx';
import { curingView } from '../../../src/screens/bench/curing/curing-view.ts';
import { shortTime } from '../../../src/words/curing-words.ts';
import { eventWords } from '../../../src/words/event-words.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { loaded, withLeast } from '../../support/loaded-tray.ts';
import { cureMinutes, resource, stage } from '../../support/workshop.ts';
import { type Mounted, mount, press, type } from '../set-up/mount.tsx';

const minute = 60_000;

beforeEach(() => void vi.useFakeTimers({ toFake: ['setInterval', 'clearInterval'] }));
afterEach(() => void vi.useRealTimers());

/** Lets time go by on the tablet, and the board look at it. */
function goBy(hands: Mounted['hands'], ms: number): void {
  hands.pass(ms);
  act(() => void vi.advanceTimersByTime(5000));
}

const textOf = (testId: string) => screen.getByTestId(testId).textContent;
const there = (testId: string) => screen.queryByTestId(testId) !== null;
const waitingAtTurn = (session: Session, tray: Parameters<typeof piecesAt>[1]['tray']) =>
  piecesAt(session.view.value.shop.positions, { tray, stage: stage.turn, at: 'waiting', grade: 'first' });

describe('the board of all that cures', () => {
  test('takes a ready round out by one tap, and an undo puts it back', async () => {
    const { session, hands } = await mount(<CuringPage />);
    const { tray, code } = await loaded(session, 6);
    expect(textOf(`curing-left-${code}`)).toBe('12 h 00');
    goBy(hands, cureMinutes * minute - 1);
    expect(textOf(`curing-left-${code}`)).toBe('1 min');
    goBy(hands, 1);
    expect(textOf(`curing-left-${code}`)).toBe('ready');
    await press(`curing-out-${code}`);
    expect(there(`curing-early-${code}`)).toBe(false);
    expect(waitingAtTurn(session, tray)).toBe(6);
    expect(there(`curing-${code}`)).toBe(false);
    expect(textOf('places-stage/glue')).toBe('0 of 8 · 8 free');
    await press('undo');
    expect(waitingAtTurn(session, tray)).toBe(0);
    expect(textOf('places-stage/glue')).toBe('6 of 8 · 2 free');
  });

  test('tells the time by the clock as it is: set back, a cure has longer to go', async () => {
    const { session, hands } = await mount(<CuringPage />);
    const { code } = await loaded(session, 6);
    hands.setWall(session.now() - 60 * minute);
    goBy(hands, 0);
    expect(textOf(`curing-left-${code}`)).toBe('13 h 00');
  });

  test('asks once before a round comes out too early, and the log says by how much', async () => {
    const { session, hands } = await mount(<CuringPage />);
    await withLeast(session, 240);
    const { tray, code } = await loaded(session, 6);
    hands.pass(200 * minute);
    await press(`curing-out-${code}`);
    expect(waitingAtTurn(session, tray)).toBe(0);
    expect(textOf(`curing-early-${code}`)).toContain('too early');
    await press(`curing-keep-${code}`);
    expect(there(`curing-early-${code}`)).toBe(false);
    expect(waitingAtTurn(session, tray)).toBe(0);
    await press(`curing-out-${code}`);
    await press(`curing-out-early-${code}`);
    expect(waitingAtTurn(session, tray)).toBe(6);
    const last = session.acts.value.at(-1)?.events.at(-1);
    expect(last).toMatchObject({ kind: 'passed', early: 40, pieces: 6 });
    expect(last && eventWords(last, session.view.value.shop.registers)).toBe(
      '6 pieces passed Glue, 40 min early',
    );
  });

  test('asks nothing from the least time on', async () => {
    const { session, hands } = await mount(<CuringPage />);
    await withLeast(session, 240);
    const { tray, code } = await loaded(session, 6);
    goBy(hands, 240 * minute);
    await press(`curing-out-${code}`);
    expect(waitingAtTurn(session, tray)).toBe(6);
    expect(session.acts.value.at(-1)?.events.at(-1)).not.toHaveProperty('early');
  });

  test('keeps how warm the shop is, shows what that makes of the times, and loads by it', async () => {
    const { session } = await mount(<CuringPage />);
    const fact = factOf(session.view.value.shop.registers, { register: 'stage', id: stage.glue });
    if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
    await session.act({
      kind: 'set',
      set: { register: 'stage', id: stage.glue, value: { ...fact, ratedAt: 200, leastMinutes: 240 } },
    });
    await press('curing-warmth');
    type('warmth-celsius', '10');
    expect(textOf('warmth-times')).toBe('Glue: 1 day, at least 8 h');
    await press('warmth-save');
    expect(factOf(session.view.value.shop.registers, { register: 'shop', id: 'shop' })?.celsius).toBe(100);
    const begun = session.now();
    const { code } = await loaded(session, 2);
    expect(textOf(`curing-left-${code}`)).toBe('1 d');
    expect(session.acts.value.at(-1)?.events.at(-1)).toMatchObject({
      celsius: 100,
      moves: [{ to: { ready: begun + 2 * cureMinutes * minute, spare: 16 * 60 } }],
    });
  });
});

describe('what the board is made of', () => {
  test('is grouped by what holds the pieces, the soonest ready first, empty clamps last', () => {
    const shop = aWorkshop();
    const fact = factOf(shop.shop.registers, { register: 'stage', id: stage.glue });
    if (fact?.kind !== 'hold') throw new Error('gluing is a hold');
    const cramps = { name: 'Cramps', capacity: 24, retired: false };
    shop.set({ register: 'resource', id: resource.cramps, value: cramps });
    shop.set({ register: 'stage', id: stage.glue, value: { ...fact, resource: resource.cramps } });
    shop.set({ register: 'stage', id: stage.sand, value: { ...fact, name: 'Lacquer', cureMinutes: 60 } });
    shop.set({ register: 'stage', id: stage.photo, value: { ...fact, name: 'Wax dries', capacity: null } });
    const [slow, quick] = [shop.tray('ash-copper', 6), shop.tray('plum-copper', 4)];
    shop.pass(slow, 'bore', { pieces: 6 });
    shop.load(slow, 'glue', { pieces: 4 });
    shop.later(30);
    shop.load(slow, 'glue', { pieces: 2 });
    for (const name of ['bore', 'glue', 'turn'] as const) shop.pass(quick, name, { pieces: 4 });
    shop.load(quick, 'sand', { pieces: 4 });
    const view = curingView(shop.shop, shop.clock());
    expect(view.map(({ key, limit }) => [key, limit.held, limit.free])).toEqual([
      ['stage/sand', 4, 4],
      ['resource/cramps', 6, 18],
      ['stage/photo', 0, Number.POSITIVE_INFINITY],
    ]);
    expect(view[1]?.rows.map(({ round, isBehind, state }) => [round.pieces, isBehind, state])).toEqual([
      [4, false, 'cures'],
      [2, true, 'cures'],
    ]);
  });

  test.each([
    [1, '1 min'],
    [59 * minute, '59 min'],
    [59 * minute + 1, '1 h 00'],
    [190 * minute, '3 h 10'],
    [24 * 60 * minute, '1 d'],
    [52 * 60 * minute, '2 d 4 h'],
    [23 * 60 * minute + 59 * minute + 1, '1 d'],
  ])('%i ms are read as “%s”', (ms, text) => {
    expect(shortTime(ms)).toBe(text);
  });
});
