import { describe, expect, test } from 'vitest';
import { type Stock, stockAt, tapAnswer, tapOf } from '../../../src/screens/bench/tap-answer.ts';
import { aWorkshop, lowered } from '../../support/a-shop.ts';
import { stage } from '../../support/workshop.ts';

const saved = { kind: 'saved', events: [] } as const;
const stock = (more: Partial<Stock>): Stock => ({ past: 21, waiting: 3, held: 0, isEmpty: false, ...more });

describe('what is heard of a tap', () => {
  test.each([
    ['pass', stock({}), 'saved', '21, 3 left'],
    ['pass', stock({ past: 24, waiting: 0, isEmpty: true }), 'last', '24, none left'],
    ['flaw', stock({ waiting: 2 }), 'flaw', 'flaw, 2 left'],
    ['flaw', stock({ waiting: 0, isEmpty: true }), 'flaw', 'flaw, none left'],
    ['undo', stock({ past: 20, waiting: 4 }), 'undone', 'taken back, 4 left'],
    ['load', stock({ held: 8, waiting: 2 }), 'saved', 'loaded, 8 cure, 2 left'],
    ['pass', stock({ held: 7, waiting: 0 }), 'saved', '21, 7 cure, 0 left'],
  ] as const)('%s with %o left is “%s”, and spoken “%s”', (tap, after, sound, count) => {
    expect(tapAnswer(saved, { tap, after })).toEqual({ sound, count });
  });

  test('a tap that is refused is no pass, whatever is left', () => {
    const refused = { kind: 'refused', problem: { kind: 'nothing-there' } } as const;
    expect(tapAnswer(refused, { tap: 'pass', after: stock({ isEmpty: true }) })).toEqual({
      sound: 'refused',
      count: 'not counted',
    });
  });

  test('what leaves a hold is a pass', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    const spot = shop.spot(tray, 'glue');
    expect(tapOf({ kind: 'pass', spot, pieces: 1 })).toBe('pass');
    expect(tapOf({ kind: 'load', spot, pieces: 1 })).toBe('load');
  });
});

describe('what a stage has of a tray', () => {
  test('counts both grades, and what is past it anywhere on the route or finished', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
    shop.load(tray, 'glue', { pieces: 2 });
    const at = (name: 'bore' | 'glue') => stockAt(shop.shop, { stage: stage[name], tray });
    expect(at('bore')).toEqual({ past: 4, waiting: 2, held: 0, isEmpty: false });
    expect(at('glue')).toEqual({ past: 0, waiting: 2, held: 2, isEmpty: false });
  });

  test('is nothing when the last piece has gone, and something while a count is below zero', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    const at = () => stockAt(shop.shop, { stage: stage.bore, tray });
    shop.pass(tray, 'bore');
    expect(at()).toEqual({ past: 1, waiting: 0, held: 0, isEmpty: true });
    shop.pass(tray, 'bore', { shown: 1 });
    expect(at()).toMatchObject({ waiting: -1, isEmpty: false });
  });

  test('off the route has nothing past it', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 3);
    expect(stockAt(shop.shop, { stage: stage.wax, tray }).past).toBe(0);
  });
});
