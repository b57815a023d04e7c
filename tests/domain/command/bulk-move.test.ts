import { expect, test } from 'vitest';
import {
  type BulkLine,
  type BulkMove,
  bulkLines,
  commandsOf,
} from '../../../src/domain/command/bulk-move.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { aWorkshop, lowered, sayLeastTime, type TestShop } from '../../support/a-shop.ts';
import { cureMinutes, stage } from '../../support/workshop.ts';

const linesOf = (tablet: TestShop, move: BulkMove, ...trays: readonly TrayId[]) =>
  bulkLines(tablet.shop, { move, trays, early: new Set(), now: tablet.clock() });
/** The line of one tray whose pieces are asked for before their least time. */
const earlyLine = (tablet: TestShop, move: BulkMove, tray: TrayId) =>
  bulkLines(tablet.shop, { move, trays: [tray], early: new Set([tray]), now: tablet.clock() })[0];

/** A line in short: the taps with their counts, or why there are none. */
function short(line: BulkLine | undefined): unknown {
  if (line?.kind !== 'would') return line?.why;
  return line.steps.map(
    ({ command: { kind, pieces, spot }, next }) =>
      `${kind} ${pieces} ${spot.grade} ${spot.at} at ${spot.stage}, then ${next}`,
  );
}

function doAll(tablet: TestShop, lines: readonly BulkLine[]): void {
  for (const line of lines)
    if (line.kind === 'would') for (const command of commandsOf(line)) tablet.act(command);
}

/** A tray whose pieces wait at the clamps, one of them a second. */
function atClamps(tablet: TestShop, pieces: number): TrayId {
  const tray = tablet.tray('ash-copper', pieces);
  tablet.flaw(tray, 'bore', { why: 'blown', outcome: lowered });
  tablet.pass(tray, 'bore', { pieces: pieces - 1 });
  return tray;
}

test('into the clamps: both grades of what waits there, and out again when the cure is over', () => {
  const tablet = aWorkshop();
  const tray = atClamps(tablet, 4);
  const load = linesOf(tablet, 'into-clamps', tray);
  expect(short(load[0])).toEqual([
    'load 3 first waiting at glue, then turn',
    'load 1 second waiting at glue, then turn',
  ]);
  expect(short(linesOf(tablet, 'out-of-clamps', tray)[0])).toEqual({ kind: 'nothing-there' });
  doAll(tablet, load);
  expect(short(linesOf(tablet, 'into-clamps', tray)[0])).toEqual({ kind: 'nothing-there' });
  expect(short(linesOf(tablet, 'out-of-clamps', tray)[0])).toMatchObject({ kind: 'still-cures' });
  tablet.later(cureMinutes);
  const unload = linesOf(tablet, 'out-of-clamps', tray);
  expect(short(unload[0])).toEqual([
    'pass 3 first held at glue, then turn',
    'pass 1 second held at glue, then turn',
  ]);
  doAll(tablet, unload);
  expect(tablet.shop.positions.working.get(tray)?.size).toBe(2);
  expect(short(linesOf(tablet, 'out-of-clamps', tray)[0])).toEqual({ kind: 'nothing-there' });
});

test('of pieces that were clamped at two times only those that are cured come out', () => {
  const tablet = aWorkshop();
  const tray = tablet.tray('ash-copper', 5);
  tablet.pass(tray, 'bore', { pieces: 5 });
  tablet.load(tray, 'glue', { pieces: 2 });
  tablet.later(60);
  tablet.load(tray, 'glue', { pieces: 3 });
  tablet.later(cureMinutes - 30);
  expect(short(linesOf(tablet, 'out-of-clamps', tray)[0])).toEqual(['pass 2 first held at glue, then turn']);
});

test('what may come out comes out unasked; what is short of its least time when that is asked for, and that is recorded', () => {
  const tablet = aWorkshop();
  sayLeastTime(tablet, 240);
  const tray = atClamps(tablet, 6);
  const begun = tablet.clock();
  const goTo = (minutes: number) => tablet.later(minutes + (begun - tablet.clock()) / 60_000);
  tablet.load(tray, 'glue', { pieces: 2 });
  goTo(60);
  tablet.load(tray, 'glue', { pieces: 3 });
  const second = tablet.clock();
  tablet.load(tray, 'glue', { grade: 'second' });
  const [still] = linesOf(tablet, 'out-of-clamps', tray);
  expect(short(still)).toMatchObject({ kind: 'still-cures' });
  expect(still?.early).toMatchObject({ pieces: 6 });
  goTo(245);
  const [line] = linesOf(tablet, 'out-of-clamps', tray);
  expect(short(line)).toEqual(['pass 2 first held at glue, then turn']);
  expect(line?.early?.pieces).toBe(4);
  expect((line?.early?.least ?? 0) - second).toBeGreaterThanOrEqual(240 * 60_000);
  const asked = earlyLine(tablet, 'out-of-clamps', tray);
  expect(short(asked)).toEqual([
    'pass 5 first held at glue, then turn',
    'pass 1 second held at glue, then turn',
  ]);
  doAll(tablet, asked ? [asked] : []);
  expect(tablet.log.slice(-2)).toMatchObject([
    { kind: 'passed', pieces: 5, early: 55 },
    { kind: 'passed', pieces: 1 },
  ]);
  expect(tablet.log.at(-1)).toHaveProperty('early');
  // What waits for the clamps is not early, whatever is asked.
  const waits = atClamps(tablet, 2);
  expect(short(earlyLine(tablet, 'out-of-clamps', waits))).toEqual({ kind: 'nothing-there' });
});

test('clamps that a tray before it in the list takes are not there for the next one', () => {
  const tablet = aWorkshop();
  const trays = [5, 4, 3].map((pieces) => atClamps(tablet, pieces));
  const lines = linesOf(tablet, 'into-clamps', ...trays);
  expect(lines.map(short)).toEqual([
    ['load 4 first waiting at glue, then turn', 'load 1 second waiting at glue, then turn'],
    { kind: 'hold-is-full', free: 3 },
    ['load 2 first waiting at glue, then turn', 'load 1 second waiting at glue, then turn'],
  ]);
  doAll(tablet, lines);
  expect(linesOf(tablet, 'into-clamps', trays[1] as TrayId).map(short)).toEqual([
    { kind: 'hold-is-full', free: 0 },
  ]);
});

test('to the shelf: what waits at the last stage of its route', () => {
  const tablet = aWorkshop();
  const tray = tablet.tray('ash-copper', 3, 'autumn');
  expect(short(linesOf(tablet, 'to-shelf', tray)[0])).toEqual({ kind: 'nothing-there' });
  tablet.pass(tray, 'turn', { pieces: 2 });
  const lines = linesOf(tablet, 'to-shelf', tray);
  expect(short(lines[0])).toEqual(['pass 2 first waiting at sand, then null']);
  doAll(tablet, lines);
  expect(tablet.spot(tray, 'turn').shown).toBe(1);
  expect(short(linesOf(tablet, 'to-shelf', tray)[0])).toEqual({ kind: 'nothing-there' });
});

test('a route that ends with a cure sends to the shelf what is cured', () => {
  const tablet = aWorkshop();
  const tray = tablet.tray('ash-copper', 2);
  const word = tablet.shop.registers.get('route/haft')?.set;
  if (word?.register !== 'route') throw new Error('the workshop has a route');
  tablet.set({ ...word, value: { ...word.value, stages: [stage.bore, stage.glue] } });
  tablet.pass(tray, 'bore', { pieces: 2 });
  expect(short(linesOf(tablet, 'to-shelf', tray)[0])).toEqual({ kind: 'nothing-there' });
  tablet.load(tray, 'glue', { pieces: 2 });
  expect(short(linesOf(tablet, 'to-shelf', tray)[0])).toMatchObject({ kind: 'still-cures' });
  tablet.later(cureMinutes);
  expect(short(linesOf(tablet, 'to-shelf', tray)[0])).toEqual(['pass 2 first held at glue, then null']);
});

test('a tray whose making was taken back is said to be gone', () => {
  const tablet = aWorkshop();
  const tray = tablet.tray('ash-copper', 2);
  tablet.undo(tablet.log.slice(-1));
  expect(short(linesOf(tablet, 'into-clamps', tray)[0])).toEqual({ kind: 'no-such-tray' });
});
