import { describe, expect, test } from 'vitest';
import type { Grade, StagePlace } from '../../../src/domain/log/place.ts';
import { liveStages } from '../../../src/domain/route/live-stages.ts';
import { placeAfter, placeSentBack, routeOfBatch, stagesBefore } from '../../../src/domain/route/route.ts';
import { aShop, aWorkshop } from '../../support/a-shop.ts';
import { batch, route, routeStages, type StageName, setUpFacts, stage } from '../../support/workshop.ts';

const stages = routeStages.map((name) => stage[name]);
const at = (name: StageName, redo: StageName | null = null, grade: Grade = 'first'): StagePlace => ({
  at: 'waiting',
  stage: stage[name],
  grade,
  redo: redo && stage[redo],
});

describe('the place after a stage', () => {
  test.each([
    ['is the next stage of the route', at('bore'), at('glue')],
    ['keeps the grade', at('bore', null, 'second'), at('glue', null, 'second')],
    ['after the last stage is finished', at('photo'), { at: 'finished', grade: 'first' }],
    [
      'keeps in mind which stage sent the piece back, on the way to it',
      at('bore', 'turn'),
      at('glue', 'turn'),
    ],
    ['keeps it in mind at that stage', at('glue', 'turn'), at('turn', 'turn')],
    ['forgets it once the piece has left that stage', at('turn', 'turn'), at('sand')],
    ['forgets a stage that is on the route no more', at('bore', 'wax'), at('glue')],
  ])('%s', (_, from, to) => {
    expect(placeAfter(stages, from)).toEqual(to);
  });

  test('of a piece that cured is a place to wait', () => {
    expect(placeAfter(stages, { ...at('glue'), at: 'held', ready: 5 })).toEqual(at('turn'));
  });
});

describe('the place a piece is sent back to', () => {
  test.each([
    ['keeps in mind which stage sent it', at('turn'), 'bore', at('bore', 'turn')],
    [
      'keeps the farther stage in mind when it is sent back twice',
      at('glue', 'sand'),
      'bore',
      at('bore', 'sand'),
    ],
    [
      'keeps the stage that sends it now, when that is the farther one',
      at('sand', 'glue'),
      'bore',
      at('bore', 'sand'),
    ],
    ['keeps the grade', at('turn', null, 'second'), 'glue', at('glue', 'turn', 'second')],
  ] as const)('%s', (_, place, to, wanted) => {
    expect(placeSentBack(stages, { place, to: stage[to] })).toEqual(wanted);
  });
});

test('a piece can be sent back to the stages before, and from the first or an unknown stage to none', () => {
  expect(stagesBefore(stages, stage.turn)).toEqual(['bore', 'glue']);
  expect(stagesBefore(stages, stage.bore)).toEqual([]);
  expect(stagesBefore(stages, stage.wax)).toEqual([]);
});

describe('the route of a batch', () => {
  test('is its stages in order, and unknown while the batch or the route is not set', () => {
    expect(routeOfBatch(aWorkshop().shop.registers, batch.spring)).toEqual(stages);
    expect(routeOfBatch(aShop().shop.registers, batch.spring)).toBeUndefined();
    const shop = aShop();
    for (const set of setUpFacts) if (set.register !== 'route') shop.set(set);
    expect(routeOfBatch(shop.shop.registers, batch.spring)).toBeUndefined();
  });
});

describe('the stages in use', () => {
  test('are those of the routes of all batches in work, each once', () => {
    const shop = aWorkshop();
    expect(new Set(liveStages(shop.shop.registers))).toEqual(new Set(stages));
    expect(liveStages(shop.shop.registers)).toHaveLength(stages.length);
  });

  test('leave out those of a batch that is done with', () => {
    const shop = aWorkshop();
    const value = { name: 'spring', route: route.haft, wanted: [], due: null, retired: true };
    shop.set({ register: 'batch', id: batch.spring, value });
    expect(liveStages(shop.shop.registers)).toEqual(['turn', 'sand']);
  });
});
