import * as v from 'valibot';
import { expect, test } from 'vitest';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import type { FlowByDay } from '../../../src/domain/study/flow-by-day.ts';
import { burnUp, cumulativeFlow, noonOf } from '../../../src/screens/study/flow-view.ts';
import { stage } from '../../support/workshop.ts';

const days = ['2026-03-02', '2026-03-03', '2026-03-06'].map((day) => v.parse(shopDayText, day));
const flow: FlowByDay = {
  days,
  stages: [
    { stage: stage.glue, standing: [9, 4, 0] },
    { stage: stage.turn, standing: [0, 3, 6] },
  ],
  finished: { first: [20, 21, 22], second: [5, 5, 6] },
  scrapped: [7, 8, 8],
  before: { finished: 25, scrapped: 6 },
};

test('bands lie on one another from the finished ones up, and each tells its own pieces', () => {
  const bands = cumulativeFlow(flow, (id) => `at ${id}`);
  expect(bands.map(({ label, told }) => [label, told])).toEqual([
    ['Finished', [0, 1, 3]],
    ['at turn', [0, 3, 6]],
    ['at glue', [9, 4, 0]],
    ['Scrapped', [1, 2, 2]],
  ]);
  expect(bands.map(({ values }) => values)).toEqual([
    [0, 1, 3],
    [0, 4, 9],
    [9, 8, 9],
    [10, 10, 11],
  ]);
});

test('what is finished is drawn out to a date that lies ahead, which has no figures yet', () => {
  const { at, series } = burnUp(flow, { wanted: 40, due: '2026-03-20' });
  expect(at).toEqual([...days, '2026-03-20'].map(noonOf));
  expect(series.map(({ key, values }) => [key, values])).toEqual([
    ['finished', [25, 26, 28, null]],
    ['firsts', [20, 21, 22, null]],
    ['scrapped', [7, 8, 8, null]],
    ['wanted', [40, 40, 40, 40]],
  ]);
});

test.each([
  ['a date that has passed', { wanted: 40, due: '2026-03-01' }, 4],
  ['no date', { wanted: 40, due: null }, 4],
  ['nothing wanted that is known', undefined, 3],
])('with %s the days are those of the taps', (_, target, lines) => {
  const { at, series } = burnUp(flow, target);
  expect(at).toEqual(days.map(noonOf));
  expect(series).toHaveLength(lines);
});
