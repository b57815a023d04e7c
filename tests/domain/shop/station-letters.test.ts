import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { type StationId, type TrayId, trayId } from '../../../src/domain/log/ids.ts';
import { sharedCodes, traysOfCode } from '../../../src/domain/rollup/same-code.ts';
import type { StationFact } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { letterOf } from '../../../src/domain/shop/station-letters.ts';
import { codeLetters } from '../../../src/domain/tray/code-alphabet.ts';
import { aShop, meet, mondayMorning, type TestShop } from '../../support/a-shop.ts';
import { batch, setUpFacts, variant } from '../../support/workshop.ts';

const make = {
  kind: 'make-trays',
  ...{ variant: variant['ash-copper'], batch: batch.spring, pieces: 1, trays: 1 },
} as const;
/** As much of the workshop as trays need. */
const needed = setUpFacts.filter(
  ({ register, id }) =>
    ['species', 'stage', 'route'].includes(register) || id === make.variant || id === make.batch,
);

const factOfOwn = ({ shop, station }: TestShop) =>
  factOf(shop.registers, { register: 'station', id: station });

/** Puts a word on the tablet's own fact. */
function say(tablet: TestShop, value: Partial<StationFact>): void {
  const fact = factOfOwn(tablet) ?? { letter: 'A', name: `${tablet.station} A`, keys: [] };
  tablet.set({ register: 'station', id: tablet.station, value: { ...fact, ...value } });
}

/** A tablet that set the shop up for itself, with the first letter, as every tablet does that knows of no other. */
function apart(name: string, minutesLater: number): TestShop {
  const tablet = aShop({ station: name, onRecord: true, now: mondayMorning + minutesLater * 60_000 });
  for (const set of needed) tablet.set(set);
  say(tablet, { letter: 'A' });
  return tablet;
}

const tablets = (count: number) =>
  Array.from({ length: count }, (_, index) => apart(`tablet-${String.fromCharCode(97 + index)}`, 40 * index));

/** What the app does as soon as it sees that its letter is another's. */
function settle(tablet: TestShop): void {
  const state = letterOf(tablet.shop.registers, tablet.station);
  if (state.kind === 'lost' && state.free !== null) say(tablet, { letter: state.free });
}

const stateOf = (tablet: TestShop) => letterOf(tablet.shop.registers, tablet.station);
const lettersOf = (all: readonly TestShop[]) => all.map((tablet) => factOfOwn(tablet)?.letter);

describe('of two tablets that were set up apart with one letter', () => {
  test('the earlier keeps it, the later is told of a free one, and both know', () => {
    const [lathe, bench] = [apart('lathe', 0), apart('bench', 5)];
    meet(lathe, bench);
    for (const { shop } of [lathe, bench]) {
      expect(letterOf(shop.registers, lathe.station)).toEqual({ kind: 'own', letter: 'A' });
      expect(letterOf(shop.registers, bench.station)).toEqual({
        kind: 'lost',
        ...{ letter: 'A', owner: lathe.station, free: 'C' },
      });
    }
  });

  test('the later makes no code before it has another letter', () => {
    const [lathe, bench] = [apart('lathe', 0), apart('bench', 5)];
    const tray = bench.tray('ash-copper', 2);
    meet(lathe, bench);
    const refused = { kind: 'letter-lost', letter: 'A', free: 'C' };
    expect(bench.refusal(make)).toEqual(refused);
    expect(bench.refusal({ kind: 'split', spot: bench.spot(tray, 'bore'), pieces: 1 })).toEqual(refused);
    expect(bench.refusal({ kind: 'recode', tray })).toEqual(refused);
    settle(bench);
    expect(bench.shop.trays.get(bench.tray('ash-copper', 1))?.code.slice(0, 2)).toBe('C1');
    expect(lathe.shop.trays.get(lathe.tray('ash-copper', 1))?.code.slice(0, 2)).toBe('A2');
  });

  test('keys that are taught and names that change leave it as it is who was first', () => {
    const [lathe, bench] = [apart('lathe', 0), apart('bench', 5)];
    for (const name of ['Lathe', 'Old lathe', 'Lathe 2']) say(lathe, { name });
    meet(lathe, bench);
    for (const key of ['x', 'y', 'z', 'w', 'v']) say(lathe, { keys: [{ act: 'pass', key }] });
    meet(lathe, bench);
    expect([stateOf(lathe).kind, stateOf(bench).kind]).toEqual(['own', 'lost']);
  });

  test('a letter that is chosen anew is claimed at that moment', () => {
    const [lathe, bench] = [apart('lathe', 0), apart('bench', 5)];
    say(lathe, { letter: 'H' });
    lathe.later(60);
    say(lathe, { letter: 'A' });
    meet(lathe, bench);
    expect([stateOf(lathe).kind, stateOf(bench).kind]).toEqual(['lost', 'own']);
  });

  test('of claims of one moment the lesser id was first', () => {
    const [b, a] = [apart('b', 0), apart('a', 0)];
    meet(a, b);
    expect([stateOf(a).kind, stateOf(b).kind]).toEqual(['own', 'lost']);
  });
});

test('several that have to give way at once take different letters, and leave those that others have', () => {
  const all = tablets(5);
  const [, , third] = all;
  if (third) say(third, { letter: 'C' });
  meet(...all);
  for (const tablet of all) settle(tablet);
  expect(lettersOf(all)).toEqual(['A', 'E', 'C', 'F', 'H']);
});

test('a station without a letter is offered one that nobody who has to give way will take', () => {
  const all = tablets(3);
  const fresh = aShop({ station: 'fresh', onRecord: true });
  meet(fresh, ...all);
  expect(stateOf(fresh)).toEqual({ kind: 'none', free: 'F' });
  for (const tablet of all) settle(tablet);
  expect(lettersOf(all)).toEqual(['A', 'C', 'E']);
});

test('a letter that was handed over is the other station’s, and its former owner takes another', () => {
  const [gone, heir] = [apart('gone', 0), apart('heir', 5)];
  say(heir, { letter: 'K' });
  meet(gone, heir);
  const fact = factOf(heir.shop.registers, { register: 'station', id: gone.station });
  if (!fact) throw new Error('it has a letter');
  heir.set({ register: 'station', id: gone.station, value: { ...fact, handedTo: heir.station } });
  say(heir, { letter: 'A' });
  meet(gone, heir);
  expect(stateOf(heir)).toEqual({ kind: 'own', letter: 'A' });
  expect(stateOf(gone)).toEqual({ kind: 'lost', letter: 'A', owner: heir.station, free: 'C' });
});

test('a tablet that comes when all letters but one are taken gets that one, whoever is long gone', () => {
  const all = tablets(12);
  const [, gone] = all;
  meet(...all);
  for (const tablet of all) if (tablet !== gone) settle(tablet);
  const fresh = aShop({ station: 'fresh', onRecord: true });
  meet(fresh, ...all);
  expect(stateOf(fresh)).toMatchObject({ kind: 'none' });
  const { free } = stateOf(fresh) as { free: string };
  expect(lettersOf(all.filter((tablet) => tablet !== gone))).not.toContain(free);
});

test('of fifteen tablets thirteen have a letter; the latest two make no code, and are told that none is free', () => {
  const all = tablets(15);
  meet(...all);
  for (const tablet of all) settle(tablet);
  meet(...all);
  expect(lettersOf(all.slice(0, 13)).join('')).toBe(codeLetters);
  for (const tablet of all.slice(13)) {
    expect(tablet.refusal(make)).toEqual({ kind: 'letter-lost', letter: 'A', free: null });
  }
});

interface Made {
  readonly by: TestShop;
  readonly code: string;
  readonly tray: TrayId;
  /** The number of the word by which its station had claimed the letter. */
  readonly claim: number;
  /** Up to which number its station had heard each other, and its own number. */
  readonly heard: ReadonlyMap<StationId, number>;
}

type Step =
  | { readonly kind: 'make' | 'key' | 'sleep'; readonly who: number }
  | { readonly kind: 'merge'; readonly who: number; readonly from: number };

const steps = (stations: number) => {
  const who = fc.nat({ max: stations - 1 });
  return fc.array(
    fc.oneof(
      { weight: 3, arbitrary: fc.record({ kind: fc.constant('make' as const), who }) },
      { weight: 3, arbitrary: fc.record({ kind: fc.constant('merge' as const), who, from: who }) },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('key' as const), who }) },
      { weight: 1, arbitrary: fc.record({ kind: fc.constant('sleep' as const), who }) },
    ),
    { maxLength: 40 },
  );
};

/** Lets tablets that were set up apart work and merge in some order; every tray that was made, with what was known then. */
function history(
  stations: number,
  plan: readonly Step[],
): { all: readonly TestShop[]; made: readonly Made[] } {
  const all = tablets(stations);
  const claims = new Map(all.map((tablet) => [tablet.station, seqOf(tablet)]));
  const made: Made[] = [];
  for (const step of plan) {
    const tablet = all[step.who];
    if (!tablet) continue;
    if (step.kind === 'sleep') tablet.later(500);
    if (step.kind === 'key') say(tablet, { keys: [{ act: 'pass', key: `k${seqOf(tablet)}` }] });
    if (step.kind === 'make') {
      const claim = claims.get(tablet.station) ?? 0;
      const heard = heardBy(tablet);
      const tray = tablet.tray('ash-copper', 1);
      made.push({ by: tablet, tray, claim, heard, code: tablet.shop.trays.get(tray)?.code ?? '' });
    }
    if (step.kind === 'merge') {
      tablet.receive(all[step.from]?.log ?? []);
      const before = factOfOwn(tablet)?.letter;
      settle(tablet);
      if (factOfOwn(tablet)?.letter !== before) claims.set(tablet.station, seqOf(tablet));
    }
  }
  return { all, made };
}

const heardBy = ({ log }: TestShop): ReadonlyMap<StationId, number> => {
  const heard = new Map<StationId, number>();
  for (const { station, seq } of log) heard.set(station, Math.max(seq, heard.get(station) ?? 0));
  return heard;
};
const seqOf = (tablet: TestShop): number => heardBy(tablet).get(tablet.station) ?? 0;

/** Whether the maker of one tray had heard by what word the maker of the other has its letter. */
const knew = (one: Made, other: Made) => (one.heard.get(other.by.station) ?? 0) >= other.claim;

const shops = fc
  .integer({ min: 2, max: codeLetters.length })
  .chain((stations) => fc.tuple(fc.constant(stations), steps(stations)));

describe('whatever two to thirteen tablets that were set up apart do and whenever they merge', () => {
  test('no two that knew of each other’s letters make one code', () => {
    fc.assert(
      fc.property(shops, ([stations, plan]) => {
        const { made } = history(stations, plan);
        const twice = made.flatMap((one, place) =>
          made
            .slice(place + 1)
            .filter((other) => other.code === one.code && knew(one, other) && knew(other, one)),
        );
        expect(twice.map(({ code }) => code)).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  test('once all have met, every letter is another, and no code is made twice from then on', () => {
    fc.assert(
      fc.property(shops, ([stations, plan]) => {
        const { all, made } = history(stations, plan);
        meet(...all);
        for (const tablet of all) settle(tablet);
        expect(new Set(lettersOf(all)).size).toBe(stations);
        const before = new Set(made.map(({ code }) => code));
        const fresh = [1, 2].flatMap(() =>
          all.map((tablet) => tablet.shop.trays.get(tablet.tray('ash-copper', 1))?.code ?? ''),
        );
        meet(...all);
        fresh.push(...all.map((tablet) => tablet.shop.trays.get(tablet.tray('ash-copper', 1))?.code ?? ''));
        expect(new Set(fresh).size).toBe(3 * stations);
        expect(fresh.filter((code) => before.has(code))).toEqual([]);
      }),
      { numRuns: 20 },
    );
  });

  test('codes that were made twice before are told of as such, and each of their trays is found', () => {
    fc.assert(
      fc.property(shops, ([stations, plan]) => {
        const { all, made } = history(stations, plan);
        meet(...all);
        const [first] = all;
        if (!first) return;
        const traysOf = (code: string) => made.filter((each) => each.code === code).map(({ tray }) => tray);
        const codes = [...new Set(made.map(({ code }) => code))];
        const twice = codes.filter((code) => traysOf(code).length > 1);
        expect(sharedCodes(first.shop)).toEqual(twice.sort());
        for (const code of twice) {
          const found = traysOfCode(first.shop, code).map(({ tray }) => tray);
          expect(new Set(found)).toEqual(new Set(traysOf(code)));
        }
      }),
      { numRuns: 20 },
    );
  });
});

test('a tray that gets a new code keeps its pieces where they are, and the other keeps the code', () => {
  const [lathe, bench] = [apart('lathe', 0), apart('bench', 5)];
  const [old, young] = [lathe.tray('ash-copper', 6), bench.tray('ash-copper', 4)];
  meet(lathe, bench);
  settle(bench);
  const code = bench.shop.trays.get(young)?.code ?? '';
  expect(traysOfCode(bench.shop, code.toLowerCase()).map(({ tray }) => tray)).toEqual([young, old]);
  bench.act({ kind: 'recode', tray: young });
  expect(sharedCodes(bench.shop)).toEqual([]);
  expect(traysOfCode(bench.shop, code).map(({ tray }) => tray)).toEqual([old, young]);
  expect(bench.refusal({ kind: 'recode', tray: young })).toEqual({ kind: 'nothing-there' });
  expect(bench.refusal({ kind: 'recode', tray: v.parse(trayId, 'gone') })).toEqual({ kind: 'no-such-tray' });
});
