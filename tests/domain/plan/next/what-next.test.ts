import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type BenchWork,
  type HoldWork,
  type NextQuestion,
  whatNext,
} from '../../../../src/domain/plan/next/what-next.ts';

type Bench = BenchWork<string, string>;

const bench = (stage: string, position: number, more: Partial<Bench> = {}): Bench => ({
  ...{ stage, position, pieces: 12, minutesEach: 5, tightest: null },
  ...more,
});
const hold = (stage: string, position: number, more: Partial<HoldWork<string>> = {}): HoldWork<string> => ({
  ...{ stage, position, cured: 0, placesWanted: false, load: null },
  ...more,
});
const ask = (question: Partial<NextQuestion<string, string>>) =>
  whatNext({ benches: [], holds: [], bottleneck: null, ...question }).map(({ stage, what, why }) =>
    [stage, what, why.kind].join(' '),
  );

test('with nothing else to say, what is furthest along comes first', () => {
  expect(ask({ benches: [bench('cut', 0), bench('wax', 9), bench('sand', 5)] })).toEqual([
    'wax work furthest',
    'sand work furthest',
    'cut work furthest',
  ]);
});

test('clamps come before benches: those that are wanted are cleared, then those that are free are loaded in time', () => {
  expect(
    ask({
      benches: [bench('wax', 9)],
      holds: [
        hold('glue', 1, { cured: 24, placesWanted: true, load: { pieces: 24, by: 5, more: 0 } }),
        hold('seal', 6, { cured: 6, load: { pieces: 8, by: 2, more: 1 } }),
      ],
    }),
  ).toEqual([
    'glue unload places-wanted',
    'seal load places-free',
    'glue load places-free',
    'wax work furthest',
    'seal unload furthest',
  ]);
});

test('the bottleneck is kept at work before all other benches', () => {
  const benches = [bench('cut', 0), bench('turn', 3, { pieces: 30 }), bench('wax', 9)];
  expect(ask({ benches, bottleneck: 'turn' })[0]).toBe('turn work bottleneck');
});

test('a bottleneck with less than two hours of work is fed by the nearest stage that has pieces for it', () => {
  const benches = [
    bench('cut', 0),
    bench('bore', 1, { pieces: 0 }),
    bench('turn', 3, { pieces: 4 }),
    bench('wax', 9),
  ];
  expect(ask({ benches, bottleneck: 'turn' })).toEqual([
    'turn work bottleneck',
    'cut work feeds',
    'wax work furthest',
  ]);
  const [, feeds] = whatNext({ benches, holds: [], bottleneck: 'turn' });
  expect(feeds?.why).toEqual({ kind: 'feeds', bottleneck: 'turn', minutesLeft: 20 });
});

test('nobody claims that a bottleneck starves whose minutes are not known', () => {
  const benches = [bench('cut', 0), bench('turn', 3, { pieces: 0, minutesEach: undefined })];
  expect(ask({ benches, bottleneck: 'turn' })).toEqual(['cut work furthest']);
});

test('a batch that will be late comes before one that is only tight, and both before what has time', () => {
  const tight = (daysToSpare: number): Partial<Bench> => ({ tightest: { batch: 'fair', daysToSpare } });
  expect(
    ask({
      benches: [bench('cut', 0, tight(-2)), bench('sand', 5, tight(1)), bench('wax', 9, tight(30))],
    }),
  ).toEqual(['cut work due-first', 'sand work due-first', 'wax work furthest']);
});

test('each stage that has something to do stands there once for each thing, in whatever order they are named', () => {
  const works = fc.uniqueArray(
    fc.record({
      position: fc.integer({ min: 0, max: 20 }),
      pieces: fc.integer({ min: -2, max: 30 }),
      minutesEach: fc.option(fc.integer({ min: 0, max: 30 }), { nil: undefined }),
      spare: fc.option(fc.integer({ min: -9, max: 9 }), { nil: null }),
    }),
    { selector: ({ position }) => position, maxLength: 8 },
  );
  fc.assert(
    fc.property(works, fc.nat(20), (list, at) => {
      const benches = list.map(({ position, pieces, minutesEach, spare }) =>
        bench(`s${position}`, position, {
          ...{ pieces, minutesEach },
          tightest: spare === null ? null : { batch: 'b', daysToSpare: spare },
        }),
      );
      const question = { benches, holds: [], bottleneck: `s${at}` };
      const told = whatNext(question);
      expect(told.map(({ stage }) => stage).sort()).toEqual(
        benches.flatMap(({ stage, pieces }) => (pieces > 0 ? [stage] : [])).sort(),
      );
      expect(whatNext({ ...question, benches: benches.toReversed() })).toEqual(told);
    }),
  );
});
