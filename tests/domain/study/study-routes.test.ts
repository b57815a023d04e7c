import * as v from 'valibot';
import { expect, test } from 'vitest';
import { stageId } from '../../../src/domain/log/ids.ts';
import { routesIn, stagesOf, stagesUpTo } from '../../../src/domain/study/study-routes.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { testRoutes } from '../../support/study-makers.ts';
import { batch, route, routeStages, stage } from '../../support/workshop.ts';

const { spring, autumn } = batch;

test('routes are those of all batches, also of one that is done with, beside the stages of batches in work', () => {
  const shop = aWorkshop();
  const [haft, short] = [routeStages.map((name) => stage[name]), [stage.turn, stage.sand]];
  const byBatch = new Map([
    [spring, haft],
    [autumn, short],
  ]);
  expect(routesIn(shop.shop.registers)).toEqual({ stages: haft, byBatch });
  shop.set({
    register: 'batch',
    id: spring,
    value: { name: 'spring', route: route.haft, wanted: [], due: null, retired: true },
  });
  expect(routesIn(shop.shop.registers)).toEqual({ stages: short, byBatch });
});

test('the stages of some batches stand in the order of the shop, each once', () => {
  expect(stagesOf(testRoutes, [autumn])).toEqual(['turn', 'sand']);
  expect(stagesOf(testRoutes, [autumn, spring])).toEqual(routeStages);
  expect(stagesOf({ ...testRoutes, byBatch: new Map() }, [autumn])).toEqual(routeStages);
  expect(stagesOf(testRoutes, [])).toEqual([]);
});

test('a stage that no batch in work has stands after the one that it follows on its own route', () => {
  const wet = v.parse(stageId, 'wet');
  const byBatch = new Map([[autumn, [stage.turn, wet, stage.sand]]]);
  expect(stagesOf({ stages: testRoutes.stages, byBatch }, [autumn])).toEqual(['turn', 'wet', 'sand']);
});

test('a piece has been through the stages of its batch up to where it is, and at least through that one', () => {
  expect(stagesUpTo(testRoutes, { batch: spring, stage: stage.turn })).toEqual(['bore', 'glue', 'turn']);
  expect(stagesUpTo(testRoutes, { batch: autumn, stage: stage.sand })).toEqual(['turn', 'sand']);
  expect(stagesUpTo(testRoutes, { batch: autumn, stage: stage.wax })).toEqual(['wax']);
});
