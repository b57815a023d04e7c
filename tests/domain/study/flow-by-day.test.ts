import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { atStage } from '../../../src/domain/log/place.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { flowByDay } from '../../../src/domain/study/flow-by-day.ts';
import { routesIn, type StudyRoutes } from '../../../src/domain/study/study-routes.ts';
import { aWorkshop, backTo, lowered, scrapped } from '../../support/a-shop.ts';
import { historiesWithout, play } from '../../support/histories.ts';
import { studied } from '../../support/study-makers.ts';
import { batch, stage } from '../../support/workshop.ts';

const routes: StudyRoutes = {
  stages: [stage.bore, stage.glue, stage.turn],
  byBatch: new Map([[batch.autumn, [stage.turn, stage.sand]]]),
};
const [monday, tuesday, wednesday] = ['2026-03-02', '2026-03-03', '2026-03-04'] as const;

/** Ten pieces of one batch and two of another on three days. */
function threeDays() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.pass(tray, 'bore', { pieces: 9 });
  shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  shop.later(24 * 60);
  shop.pass(tray, 'glue', { pieces: 5 });
  shop.flaw(tray, 'glue', { why: 'gap', outcome: scrapped() });
  shop.pass(tray, 'turn', { pieces: 2 });
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: lowered });
  // Sent back, it still stands at the stage that sent it.
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: backTo('glue') });
  shop.later(24 * 60);
  const other = shop.tray('plum-copper', 2, 'autumn');
  shop.pass(other, 'turn', { pieces: 2 });
  return studied(shop.log);
}

test('what came through one stage stands at the next until it is through that or lost', () => {
  expect(flowByDay(threeDays(), { routes, filter: { batch: batch.spring } })).toEqual({
    days: [monday, tuesday],
    stages: [
      { stage: stage.glue, standing: [9, 3] },
      { stage: stage.turn, standing: [0, 2] },
    ],
    finished: { first: [0, 2], second: [0, 1] },
    scrapped: [1, 2],
    before: { finished: 0, scrapped: 0 },
  });
});

test('each batch goes its own route, and the first stage of it is not told of', () => {
  const { days, stages } = flowByDay(threeDays(), { routes });
  expect(days).toEqual([monday, tuesday, wednesday]);
  expect(stages).toEqual([
    { stage: stage.glue, standing: [9, 3, 3] },
    { stage: stage.turn, standing: [0, 2, 2] },
    { stage: stage.sand, standing: [0, 0, 2] },
  ]);
});

test('days choose what is shown: what stood there before them still does', () => {
  const filter = { from: tuesday as ShopDay, batch: batch.spring };
  expect(flowByDay(threeDays(), { routes, filter })).toMatchObject({
    days: [tuesday],
    stages: [{ standing: [3] }, { standing: [2] }],
    before: { finished: 0, scrapped: 1 },
  });
  const none = flowByDay(threeDays(), { routes, filter: { from: '2027-01-01' as ShopDay } });
  expect(none).toMatchObject({ days: [], stages: [], scrapped: [] });
});

test('the last day agrees with where the shop has its pieces, whatever happened', () => {
  fc.assert(
    // What is no tap at a stage is no flow: counts put right, seconds that became firsts, a route that changed under pieces.
    fc.property(historiesWithout('recount', 'raise', 'reroute', 'set'), (steps) => {
      const { log } = play(steps);
      const shop = shopOf(log);
      const its = routesIn(shop.registers);
      const flow = flowByDay(studied(log), { routes: its });
      const expected = new Map<string, number>();
      for (const record of shop.trays.values()) {
        const places = shop.positions.working.get(record.tray) ?? shop.positions.settled.get(record.tray);
        for (const { place, pieces } of places?.values() ?? []) {
          const at = atStage(place)
            ? (place.redo ?? place.stage)
            : place.at === 'finished'
              ? place.grade
              : place.at;
          if (at === (its.byBatch.get(record.batch) ?? its.stages)[0]) continue;
          expected.set(at, (expected.get(at) ?? 0) + pieces);
        }
      }
      const found = new Map<string, number>([
        ...flow.stages.map(({ stage: at, standing }) => [at, standing.at(-1) ?? 0] as const),
        ['first', flow.finished.first.at(-1) ?? 0],
        ['second', flow.finished.second.at(-1) ?? 0],
        ['scrapped', flow.scrapped.at(-1) ?? 0],
      ]);
      const told = (sums: ReadonlyMap<string, number>) =>
        [...sums].filter(([, pieces]) => pieces !== 0).sort(([a], [b]) => (a < b ? -1 : 1));
      expect(told(found)).toEqual(told(expected));
    }),
    { numRuns: 60 },
  );
});
