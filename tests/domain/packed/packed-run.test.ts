import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained, type Entry, entryAfter, noLink } from '../../../src/domain/log/chain.ts';
import { holdingOf } from '../../../src/domain/log/holding.ts';
import type { LogEvent } from '../../../src/domain/log/read-event.ts';
import { growingRun } from '../../../src/domain/packed/growing-run.ts';
import { actMark, mostInRun, packRun, runLength } from '../../../src/domain/packed/pack-run.ts';
import { openedRun, storedRun } from '../../../src/domain/packed/packed-run.ts';
import { textEntryOf } from '../../../src/domain/packed/text-entry.ts';
import { entriesOf, eventsOf } from '../../../src/domain/packed/unpack-run.ts';
import { histories, play } from '../../support/histories.ts';
import { packedRuns } from '../../support/run-makers.ts';

const demo = chained(demoShop({ now: Date.UTC(2026, 2, 4, 14) }));

/** An event of a kind that this version does not know: anything that JSON can say. */
function newerEvent(seq: number, more: object): LogEvent {
  return JSON.parse(
    JSON.stringify({
      station: 'tablet-a',
      seq,
      stamp: { wall: 1000 + seq, tick: 0 },
      kind: 'blessed',
      ...more,
    }),
  ) as LogEvent;
}

function chainOf(events: readonly LogEvent[]): readonly Entry[] {
  return chained(events);
}

const asText = (entries: readonly Entry[]) => entries.map((entry) => JSON.stringify(entry));

describe('a packed run', () => {
  test('gives every entry of any history as its station wrote it, to the letter and to the link', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        for (const run of packedRuns(chained(log))) {
          const own = chained(log).filter(({ event }) => event.station === run.station);
          expect(asText(entriesOf(run))).toEqual(asText(own));
          expect(run.sum).toBe(holdingOf(own.map(({ link }) => link)).sum);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('gives any event of a newer version as it was, whatever is in it', () => {
    const values = fc.jsonValue({ maxDepth: 4 });
    const name = fc.constantFrom(
      'of',
      'into',
      'day',
      'person',
      'wall',
      'since',
      'seq',
      'tray',
      'elapsed',
      'tick',
    );
    const more = fc.dictionary(fc.oneof(name, fc.string()), values, { maxKeys: 6 });
    fc.assert(
      fc.property(fc.array(more, { minLength: 1, maxLength: 8 }), (all) => {
        const entries = chainOf(
          all.map((own, at) => newerEvent(at + 1, { ...own, station: 'tablet-a', seq: at + 1 })),
        );
        for (const run of packedRuns(entries))
          expect(asText(entriesOf(run))).toEqual(
            asText(entries.slice(run.first - 1, run.first - 1 + run.entries)),
          );
      }),
    );
  });

  test('keeps names that reach a prototype, and control characters, as what they are', () => {
    const odd = JSON.parse('{"__proto__":{"wall":5},"note":"\\u0001\\u0004 \\u0000","constructor":"x"}');
    const entries = chainOf([newerEvent(1, { odd }), newerEvent(2, { odd })]);
    const [run] = packedRuns(entries);
    if (!run) throw new Error('there is a run');
    expect(asText(entriesOf(run))).toEqual(asText(entries));
    const [event] = [...eventsOf(run)] as unknown as { odd: object }[];
    expect(Object.keys(event?.odd ?? {})).toEqual(['__proto__', 'note', 'constructor']);
  });

  test('is the same after a store had it', () => {
    for (const run of packedRuns(demo)) {
      const back = openedRun(run, structuredClone(storedRun(run)));
      expect(asText(entriesOf(back))).toEqual(asText(entriesOf(run)));
      expect([...back.columns.act]).toEqual([...run.columns.act]);
    }
  });

  test('takes fewer than 25 bytes for the numbers of an event', () => {
    for (const run of packedRuns(demo))
      expect(storedRun(run).bytes.byteLength / run.entries).toBeLessThan(25);
  });

  test('tells taps apart, and keeps nothing for entries that came from elsewhere', () => {
    const [run] = packedRuns(demo);
    const [a, b, c] = run ? entriesOf(run) : [];
    if (!a || !b || !c) throw new Error('the demo has entries');
    const { act } = packRun([
      { entry: a, mark: actMark('one') },
      { entry: b, mark: actMark('two') },
      { entry: c },
    ]).columns;
    expect(act[0]).not.toBe(act[1]);
    expect(act[2]).toBe(0);
  });
});

describe('what cannot be packed', () => {
  const [first, second, third] = chainOf([1, 2, 3].map((seq) => newerEvent(seq, {})));
  if (!first || !second || !third) throw new Error('three entries');
  const own = (entries: readonly Entry[]) => entries.map((entry) => ({ entry }));

  test('a run ends before a gap, another station, a break of the chain and its greatest length', () => {
    expect(runLength(own([first, second, third]))).toBe(3);
    expect(runLength(own([first, third]))).toBe(1);
    expect(
      runLength(own([first, { ...second, event: { ...second.event, station: 'other' as never } }])),
    ).toBe(1);
    expect(runLength(own([first, { ...second, prev: noLink }]))).toBe(1);
    const long = Array.from({ length: mostInRun + 1 }, (_, at) => ({
      ...first,
      prev: first.link,
      event: { ...first.event, seq: at + 1 },
    }));
    expect(runLength(own(long))).toBe(mostInRun);
    expect(runLength([])).toBe(0);
  });

  test('entries that are no run, or not as they were written, are refused', () => {
    expect(() => packRun([])).toThrow('no run');
    expect(() => packRun(own([first, third]))).toThrow('no run');
    expect(() => packRun(own([{ ...first, event: { ...first.event, kind: 'cursed' } }]))).toThrow(
      'does not say',
    );
  });

  test('entries that were just held against their links are read back by their texts alone, to the same run', () => {
    const entries = own([first, second, third]);
    const [one, ...others] = [first, second, third].map(textEntryOf);
    if (!one) throw new Error('three entries');
    const run = growingRun(one);
    expect(others.map(run.take)).toEqual([true, true]);
    expect(run.take(one)).toBe(false);
    expect(run.packed()).toEqual(packRun(entries));
    expect(run.entries()).toEqual([first, second, third]);
    const note = { toJSON: () => 'said otherwise' };
    const odd = entryAfter(noLink, Object.assign(newerEvent(1, {}), { note }));
    expect(growingRun(textEntryOf(odd)).packed).toThrow('does not say');
  });

  test('a run that does not end in its link is not opened', () => {
    const [run] = packedRuns([first, second]);
    if (!run) throw new Error('there is a run');
    expect(() => entriesOf({ ...run, link: third.link })).toThrow('its link');
    expect(() => entriesOf({ ...run, prev: third.link })).toThrow('its link');
    expect(() => entriesOf({ ...run, shapes: [] })).toThrow('dictionaries');
  });

  test('an event whose number stands elsewhere is kept whole', () => {
    const event = Object.assign({ before: { seq: 7, wall: 3 } }, newerEvent(1, {}));
    const entry = entryAfter(noLink, event);
    expect(asText(entriesOf(packRun([{ entry }])))).toEqual(asText([entry]));
  });
});
