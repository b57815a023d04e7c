import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { mostRevisions, type SetUpEvent } from '../../../src/domain/log/event.ts';
import { shopDayText, stationId } from '../../../src/domain/log/ids.ts';
import { factOf, type Registers, setRegister } from '../../../src/domain/shop/registers.ts';
import { aShop, meet, mondayMorning, type TestShop } from '../../support/a-shop.ts';
import { person } from '../../support/workshop.ts';

const year = 365 * 24 * 60;
const edda = { register: 'person', id: person.edda } as const;
const nameOn = ({ shop }: TestShop) => factOf(shop.registers, edda)?.name;

function rename(tablet: TestShop, name: string): SetUpEvent {
  const [event] = tablet.set({ ...edda, value: { name, retired: false } });
  if (event?.kind !== 'set-up') throw new Error('a set-up fact is set up');
  return event;
}

const stationName = fc.constantFrom('a', 'a-b', 'ab', 'b', 'b1', 'b10', 'b2');
/** A word of any author, clock and history; few values, so that each tie comes up. */
const word = fc
  .record({
    station: stationName,
    seq: fc.integer({ min: 1, max: 4 }),
    wall: fc.integer({ min: 0, max: 2 }),
    tick: fc.integer({ min: 0, max: 2 }),
    rev: fc.option(fc.integer({ min: 0, max: 2 }), { nil: undefined }),
  })
  .map(
    ({ station, seq, wall, tick, rev }): SetUpEvent => ({
      kind: 'set-up',
      station: v.parse(stationId, station),
      seq,
      stamp: { wall, tick },
      zone: { name: 'Europe/London', offset: 0 },
      day: v.parse(shopDayText, '2026-03-02'),
      person: null,
      set: { ...edda, value: { name: `${station} ${seq}`, retired: false } },
      ...(rev === undefined ? {} : { rev }),
    }),
  );
/** Words of one log: no station gives a number twice. */
const words = fc.uniqueArray(word, {
  minLength: 1,
  maxLength: 12,
  selector: ({ station, seq }) => `${station}:${seq}`,
});

function heard(events: Iterable<SetUpEvent>, registers: Registers = new Map()): SetUpEvent | undefined {
  for (const event of events) setRegister(registers, event);
  return registers.get('person/edda');
}

describe('whichever words a tablet hears', () => {
  const shuffled = words.chain((all) =>
    fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length }), fc.shuffledSubarray(all)),
  );

  test('in whatever order and however often, the same one stands', () => {
    fc.assert(
      fc.property(shuffled, ([all, order, again]) => {
        expect(heard([...order, ...again])).toBe(heard(all));
      }),
      { numRuns: 1000 },
    );
  });

  test('what stands of two lots is what stands of all, however they are split', () => {
    fc.assert(
      fc.property(shuffled, fc.nat(12), ([all, order], cut) => {
        const winners = [order.slice(0, cut), order.slice(cut)].flatMap((lot) => heard(lot) ?? []);
        expect(heard(winners)).toBe(heard(all));
      }),
      { numRuns: 1000 },
    );
  });

  test('words of older versions alone stand as they always did: by stamp, station and number', () => {
    fc.assert(
      fc.property(words, (all) => {
        const old = all.map(({ rev, ...event }): SetUpEvent => event);
        const last = old.toSorted(
          (a, b) =>
            a.stamp.wall - b.stamp.wall ||
            a.stamp.tick - b.stamp.tick ||
            Number(a.station > b.station) - Number(a.station < b.station) ||
            a.seq - b.seq,
        );
        expect(heard(old)).toBe(last.at(-1));
      }),
      { numRuns: 500 },
    );
  });
});

describe('an edit made after another was seen stands', () => {
  const yearsOff = [-20, -6, -1, 0, 1, 6, 20] as const;
  const pairs = yearsOff.flatMap((one) => yearsOff.map((other) => [one, other] as const));

  test.each(pairs)('on tablets whose clocks are %i and %i years off', (one, other) => {
    const [bench, office] = [one, other].map((years, index) =>
      aShop({ station: `tablet-${index}`, now: mondayMorning + years * year * 60_000 }),
    );
    if (!bench || !office) throw new Error('two tablets');
    rename(bench, 'Said first');
    meet(bench, office);
    rename(office, 'Said second');
    meet(bench, office);
    rename(bench, 'Said third');
    expect(nameOn(bench)).toBe('Said third');
    meet(bench, office);
    expect([nameOn(bench), nameOn(office)]).toEqual(['Said third', 'Said third']);
  });

  const step = fc.record({ tablet: fc.nat(2), hears: fc.option(fc.nat(1), { freq: 2 }), jump: fc.nat(8) });

  test('through any number of edits and meetings, with clocks that jump by years: no word that somebody has seen and answered stands', () => {
    fc.assert(
      fc.property(fc.array(step, { minLength: 1, maxLength: 30, size: 'max' }), (steps) => {
        const tablets = ['a', 'b', 'c'].map((station) => aShop({ station }));
        const answered = new Set<SetUpEvent>();
        for (const [index, { tablet, hears, jump }] of steps.entries()) {
          const [here, there] = [tablets[tablet], tablets[(tablet + 1 + (hears ?? 0)) % 3]];
          if (!here || !there) throw new Error('three tablets');
          here.later((jump - 4) * 2 * year);
          if (hears !== null) here.receive([...there.log]);
          else {
            const seen = here.shop.registers.get('person/edda');
            if (seen) answered.add(seen);
            rename(here, `Name ${index}`);
            // One's own last word stands at once, whatever has been heard before.
            expect(nameOn(here)).toBe(`Name ${index}`);
          }
        }
        meet(...tablets);
        const standing = tablets.map(({ shop }) => shop.registers.get('person/edda'));
        expect(new Set(standing.map((event) => event && `${event.station}:${event.seq}`)).size).toBe(1);
        for (const event of standing) expect(event && answered.has(event)).not.toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('also over a word that an older version wrote without saying what it had seen', () => {
    const [bench, office] = ['bench', 'office'].map((station) => aShop({ station }));
    if (!bench || !office) throw new Error('two tablets');
    office.later(20 * year);
    const { rev, ...old } = rename(office, 'From 2046');
    bench.receive([old]);
    rename(bench, 'Set right');
    expect(nameOn(bench)).toBe('Set right');
  });
});

test('two edits made apart go by their stamps', () => {
  const [bench, office] = ['bench', 'office'].map((station) => aShop({ station }));
  if (!bench || !office) throw new Error('two tablets');
  rename(bench, 'Said by both');
  meet(bench, office);
  office.later(60);
  rename(bench, 'Said earlier');
  rename(office, 'Said later');
  meet(bench, office);
  expect([nameOn(bench), nameOn(office)]).toEqual(['Said later', 'Said later']);
});

test('a word that claims more edits than anyone could make is answered with one that can still be read', () => {
  const shop = aShop();
  const known = rename(shop, 'Edda');
  shop.receive([{ ...known, station: v.parse(stationId, 'forged'), rev: mostRevisions }]);
  expect(rename(shop, 'Odo').rev).toBe(mostRevisions);
  expect(nameOn(shop)).toBe('Odo');
});
