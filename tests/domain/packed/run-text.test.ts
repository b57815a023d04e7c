import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import { chained } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { readEvent } from '../../../src/domain/log/read-event.ts';
import { eventTexts } from '../../../src/domain/packed/event-texts.ts';
import { judgeOfRuns } from '../../../src/domain/packed/judge-run.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { readRun, runText } from '../../../src/domain/packed/run-text.ts';
import { entriesOf } from '../../../src/domain/packed/unpack-run.ts';
import { spellDraft } from '../../support/drafts.ts';
import { histories, play } from '../../support/histories.ts';
import { packedRuns } from '../../support/run-makers.ts';

const [run] = packedRuns(chained(demoShop({ now: Date.UTC(2026, 2, 4, 14) })));
if (!run) throw new Error('the demo has a run');

const isKnown = (event: unknown) => {
  const read = readEvent(event);
  return read.kind === 'damaged' ? read.problems.join() : null;
};
const longest = 4096;
const problemOfRun = (each: PackedRun) => judgeOfRuns(isKnown, { longest })(each);
const raw = (of: PackedRun) => JSON.parse(runText(of));

describe('a run as text', () => {
  test('is the same run when it is read', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        for (const each of packedRuns(chained(play(steps).log))) {
          const read = readRun(raw(each));
          expect(read && entriesOf(read)).toEqual(entriesOf(each));
          expect(read && problemOfRun(read)).toBe(null);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('of another form is no run', () => {
    const good = raw(run);
    const wall = [...good.columns.wall];
    for (const bad of [
      null,
      [],
      { ...good, station: '../x' },
      { ...good, entries: good.entries + 1 },
      { ...good, entries: 1e9 },
      { ...good, link: 'x' },
      { ...good, shapes: [1] },
      { ...good, base: -1 },
      { ...good, base: 0.5 },
      { ...good, extras: ['1'] },
      { ...good, columns: { ...good.columns, wall: wall.slice(1) } },
      { ...good, columns: { ...good.columns, wall: [-1, ...wall.slice(1)] } },
      { ...good, columns: { ...good.columns, wall: [2 ** 32, ...wall.slice(1)] } },
      { ...good, columns: { ...good.columns, shape: [0.5, ...good.columns.shape.slice(1)] } },
      { ...good, columns: null },
    ])
      expect(readRun(bad)).toBe(undefined);
    expect(readRun(good)).toBeDefined();
  });
});

describe('a run from outside is judged', () => {
  const changed = (change: Partial<PackedRun>) => problemOfRun({ ...run, ...change });
  const column = (name: keyof PackedRun['columns'], value: number, at: number) => {
    const numbers = Uint32Array.from(run.columns[name]);
    numbers[at] = value;
    return { columns: { ...run.columns, [name]: numbers } };
  };

  test('sound as it was packed', () => {
    expect(changed({})).toBe(null);
  });

  test('by every shape and text in it', () => {
    for (const index of run.shapes.keys())
      expect(changed({ shapes: run.shapes.with(index, '{"kind":"passed"}') }), `shape ${index}`).not.toBe(
        null,
      );
    expect(changed({ days: run.days.with(0, '"yesterday"') })).not.toBe(null);
    expect(changed({ persons: run.persons.with(0, '{"name":1}') })).not.toBe(null);
    expect(changed({ trays: run.trays.with(3, '{"tray":"t"}') })).not.toBe(null);
    expect(changed({ trays: run.trays.with(3, 'no json') })).not.toBe(null);
  });

  test('by its extremes: an index beyond a dictionary, a time before 1970, extras that are not there', () => {
    expect(changed(column('tray', 60_000, 700))).not.toBe(null);
    expect(changed(column('shape', 60_000, 700))).not.toBe(null);
    const passed = [...run.columns.time].findIndex((time) => time > 0);
    expect(changed({ base: 1000, ...column('time', 2 ** 32 - 1, passed) })).not.toBe(null);
    expect(changed({ extras: run.extras.slice(1) })).not.toBe(null);
  });

  test('by where its holes are: a count that is taken from a column could be anything', () => {
    const at = run.shapes.findIndex(
      (shape) => shape.includes('"kind":"passed"') && shape.includes('"pieces":1,'),
    );
    const shape = run.shapes[at]?.replace(/"pieces":1,/, '"pieces":\u0005,') ?? '';
    const row = run.columns.shape.indexOf(at);
    expect(changed({ shapes: run.shapes.with(at, shape), ...column('tick', 1, row) })).not.toBe(null);
  });

  test('by its last number, and by extras that nothing asks for', () => {
    const farAhead = (event: unknown) => ((event as { seq: number }).seq > 1e9 ? 'far ahead' : null);
    const late = { ...run, first: 1e9 - run.entries + 2 };
    expect(judgeOfRuns(farAhead, { longest })(late)).toBe('far ahead');
    expect(changed({ extras: Float64Array.from([...run.extras, 1]) })).not.toBe(null);
  });

  test('by how long its events are, though the texts of them are short', () => {
    const characters = [...eventTexts(run)].reduce((sum, { text }) => sum + text.length, 0) / run.entries;
    expect(judgeOfRuns(isKnown, { longest: characters / 2 })(run)).toContain('longer');
    expect(judgeOfRuns(isKnown, { longest: characters * 2 })(run)).toBe(null);
  });

  describe('though an event that needs none of its columns stands before all others', () => {
    const spells = [1, 2, 3, 4].map((seq) => ({
      ...spellDraft('turn'),
      ...{ station: 'tablet-a', seq, stamp: { wall: 1000 + seq, tick: 0 } },
    }));
    const [small] = packedRuns(chained(spells as unknown as ShopEvent[]));
    const first = small && [...eventTexts(small)][0]?.text;
    if (!small || !first) throw new Error('there is a run');
    const hidden = (columns: Partial<PackedRun['columns']>, days = small.days): PackedRun => ({
      ...small,
      days,
      shapes: [...small.shapes, first],
      columns: { ...small.columns, shape: Uint32Array.of(1, 0, 0, 0), ...columns },
    });

    test('which may be as it is', () => {
      expect(problemOfRun(hidden({}))).toBe(null);
    });

    test('and seems to be the one with the greatest of numbers', () => {
      const judge = (event: unknown) => ((event as ShopEvent).stamp.tick > 1e9 ? 'beyond reason' : null);
      const run = hidden({ tick: Uint32Array.of(4e9, 0, 3e9, 0) });
      expect(judgeOfRuns(judge, { longest })(run)).toBe('beyond reason');
    });

    test('and seems to be the first with a text', () => {
      const run = hidden({ day: Uint32Array.of(0, 1, 0, 1) }, ['"no day"', ...small.days]);
      expect(problemOfRun(run)).toContain('no day');
    });
  });

  test('by each text wherever it stands: a newer event, of which nobody knows what is right, vouches for none', () => {
    const good = { tray: 'tablet-a-1', code: 'A1X', variant: 'ash-copper', species: 'ash', batch: 'spring' };
    const draft = { ...spellDraft('turn'), moves: [], elapsed: null };
    const blessedAndHeld = (of: object) => {
      const events = [
        { ...draft, kind: 'hold-begun', of: good },
        { ...draft, kind: 'blessed', of },
        { ...draft, kind: 'hold-begun', of },
        { ...draft, kind: 'hold-begun', of: good },
      ].map((event, at) => ({
        ...event,
        station: 'tablet-a',
        seq: at + 1,
        stamp: { wall: 1000 + at, tick: 0 },
      }));
      const [forged] = packedRuns(chained(events as unknown as ShopEvent[]));
      if (!forged) throw new Error('there is a run');
      return forged;
    };
    expect(problemOfRun(blessedAndHeld({ ...good, tray: 'tablet-a-2' }))).toBe(null);
    expect(problemOfRun(blessedAndHeld({ ...good, tray: 'tablet-a-2', species: 'a|b' }))).not.toBe(null);
  });

  test('once for what was found sound before, and never by what was found in a run that was not', () => {
    let judged = 0;
    const problem = judgeOfRuns(
      (event) => {
        judged += 1;
        return isKnown(event);
      },
      { longest },
    );
    const bad = { ...run, days: run.days.with(-1, '"never"') };
    expect(problem(bad)).toContain('never');
    expect(problem(bad)).toContain('never');
    judged = 0;
    expect(problem(run)).toBe(null);
    const all = judged;
    expect(problem(run)).toBe(null);
    expect(judged - all).toBeLessThan(all / 10);
    expect(problem(bad)).toContain('never');
  });
});
