import { expect, test } from 'vitest';
import { liveStages } from '../../../src/domain/route/live-stages.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { batch, route, routeStages, stage } from '../../support/workshop.ts';

test('a short route of a second batch does not disturb the order of the long one', () => {
  expect(liveStages(aWorkshop().shop.registers).map(String)).toEqual([...routeStages]);
});

test('a stage that only the second route has stands after the stage that it follows there', () => {
  const shop = aWorkshop();
  const stages = [stage.turn, stage.wax, stage.sand];
  shop.set({ register: 'route', id: route.short, value: { name: 'Short', stages } });
  expect(liveStages(shop.shop.registers).map(String)).toEqual([
    'bore',
    'glue',
    'turn',
    'wax',
    'sand',
    'grade',
    'photo',
  ]);
});

test('stages of a batch that was put away are no longer among them', () => {
  const shop = aWorkshop();
  const value = { name: 'spring', route: route.haft, wanted: [], due: null, retired: true };
  shop.set({ register: 'batch', id: batch.spring, value });
  expect(liveStages(shop.shop.registers).map(String)).toEqual(['turn', 'sand']);
});
