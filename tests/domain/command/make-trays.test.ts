import { describe, expect, test } from 'vitest';
import type { CommandOf } from '../../../src/domain/command/command.ts';
import { mostOnTray, mostTrays, nextCodes } from '../../../src/domain/command/decide-trays.ts';
import type { Draft } from '../../../src/domain/log/event.ts';
import type { BatchId, VariantId } from '../../../src/domain/log/ids.ts';
import type { RegisterSet } from '../../../src/domain/set-up/register.ts';
import { numberOfCode, parseTrayCode } from '../../../src/domain/tray/tray-code.ts';
import { aShop, aWorkshop, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { batch, route, setUpFacts, variant } from '../../support/workshop.ts';

const make = (change: Partial<CommandOf<'make-trays'>> = {}): CommandOf<'make-trays'> => ({
  kind: 'make-trays',
  variant: variant['ash-copper'],
  batch: batch.spring,
  pieces: 12,
  trays: 1,
  ...change,
});
const codesOf = (shop: TestShop) => [...shop.shop.trays.values()].map(({ code }) => code);

describe('making up trays', () => {
  test('puts the pieces at the first stage of the route of the batch, as firsts', () => {
    const shop = aWorkshop();
    shop.act(make({ trays: 2, pieces: 7 }));
    shop.act(make({ batch: batch.autumn, pieces: 3 }));
    const places = [...shop.shop.positions.working.values()].flatMap((each) => [...each.values()]);
    expect(places.map(({ place, pieces }) => ({ ...place, pieces }))).toEqual([
      { at: 'waiting', stage: 'bore', grade: 'first', redo: null, pieces: 7 },
      { at: 'waiting', stage: 'bore', grade: 'first', redo: null, pieces: 7 },
      { at: 'waiting', stage: 'turn', grade: 'first', redo: null, pieces: 3 },
    ]);
  });

  test('gives each tray an id of its own and the next code of the station', () => {
    const shop = aWorkshop({ letter: 'K' });
    shop.act(make({ trays: 3 }));
    shop.act(make());
    expect(codesOf(shop).map((code) => numberOfCode(parseTrayCode(code) ?? fail(code)))).toEqual([
      1, 2, 3, 4,
    ]);
    expect(codesOf(shop).every((code) => code.startsWith('K'))).toBe(true);
    expect(new Set(shop.shop.trays.keys()).size).toBe(4);
  });

  test('goes on from the highest number of its own letter, whatever other stations have', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    bench.act(make({ trays: 12 }));
    office.act(make());
    meet(bench, office);
    expect(nextCodes(bench.shop, { letter: 'A', trays: 2 }).map((code) => code.slice(0, 3))).toEqual([
      'A13',
      'A14',
    ]);
    expect(nextCodes(bench.shop, { letter: 'C', trays: 1 })[0]?.slice(0, 2)).toBe('C2');
    expect(nextCodes(bench.shop, { letter: 'X', trays: 1 })[0]?.slice(0, 2)).toBe('X1');
  });

  test('writes the wood, variant and batch into the tray, so that later set-up cannot change them', () => {
    const shop = aWorkshop();
    shop.act(make());
    expect(shop.log.at(-1)).toMatchObject({
      kind: 'tray-made',
      of: { variant: 'ash-copper', species: 'ash', batch: 'spring' },
    });
  });

  test(`takes up to ${mostTrays} trays of up to ${mostOnTray} pieces at a time`, () => {
    const shop = aWorkshop();
    shop.act(make({ trays: mostTrays, pieces: mostOnTray }));
    expect(shop.shop.trays.size).toBe(50);
    expect(Object.fromEntries(shop.shop.ledger.made)).toEqual({ 'ash|ash-copper': 50 * 999 });
  });
});

describe('making up trays is refused', () => {
  const counts = [
    { count: 0, problem: { kind: 'too-small', least: 1 } },
    { count: -3, problem: { kind: 'too-small', least: 1 } },
    { count: 2.5, problem: { kind: 'not-whole' } },
    { count: Number.NaN, problem: { kind: 'not-a-number' } },
  ] as const;

  test.each([
    ...counts,
    { count: 1000, problem: { kind: 'too-large', most: 999 } } as const,
    { count: 1e9, problem: { kind: 'too-large', most: 999 } } as const,
  ])('for $count pieces on a tray', ({ count, problem }) => {
    expect(aWorkshop().refusal(make({ pieces: count }))).toEqual({ kind: 'number', problem });
  });

  test.each([
    ...counts,
    { count: 51, problem: { kind: 'too-large', most: 50 } } as const,
    { count: 1e9, problem: { kind: 'too-large', most: 50 } } as const,
  ])('for $count trays', ({ count, problem }) => {
    expect(aWorkshop().refusal(make({ trays: count }))).toEqual({ kind: 'number', problem });
  });

  test('by a station that has no letter yet', () => {
    expect(aWorkshop({ letter: null }).refusal(make())).toEqual({ kind: 'no-letter' });
  });

  test('for a variant that is not set up', () => {
    expect(aWorkshop().refusal(make({ variant: 'olive-copper' as VariantId }))).toEqual({
      kind: 'no-such-variant',
    });
  });

  test('for a batch that is not set up, or whose route is not', () => {
    expect(aWorkshop().refusal(make({ batch: 'winter' as BatchId }))).toEqual({ kind: 'no-such-batch' });
    const shop = aShop();
    for (const set of setUpFacts) if (set.register !== 'route') shop.set(set);
    expect(shop.refusal(make())).toEqual({ kind: 'no-such-batch' });
  });

  test('for a route without stages', () => {
    const shop = aWorkshop();
    shop.record([emptyRoute(shop)]);
    expect(shop.refusal(make({ batch: batch.autumn }))).toEqual({ kind: 'route-is-empty' });
  });
});

/** A route without stages comes from outside, or from an older version: no command of this one writes it. */
function emptyRoute({ log }: TestShop): Draft {
  const known = log.find((event) => event.kind === 'set-up' && event.set.id === route.short);
  if (known?.kind !== 'set-up') throw new Error('the route is set up');
  const { zone, day, person } = known;
  const set: RegisterSet = { register: 'route', id: route.short, value: { name: 'Short', stages: [] } };
  return { kind: 'set-up', zone, day, person, set };
}

function fail(text: string): never {
  throw new Error(`no tray code: ${text}`);
}
