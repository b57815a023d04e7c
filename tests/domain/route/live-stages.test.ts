import * as v from 'valibot';
import { expect, test } from 'vitest';
import { batchId } from '../../../src/domain/log/ids.ts';
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

test('of two routes of one length the one whose first batch comes first by name leads, however many batches have them', () => {
  const shop = aWorkshop();
  for (const id of [batch.spring, batch.autumn]) {
    shop.set({
      register: 'batch',
      id,
      value: { name: 'Old', route: route.haft, wanted: [], due: null, retired: true },
    });
  }
  shop.set({ register: 'route', id: route.haft, value: { name: 'Haft', stages: [stage.bore, stage.turn] } });
  shop.set({ register: 'route', id: route.short, value: { name: 'Short', stages: [stage.sand, stage.wax] } });
  for (let count = 12; count >= 8; count -= 1) {
    const on = count % 2 === 0 ? route.haft : route.short;
    const value = { name: `Batch ${count}`, route: on, wanted: [], due: null, retired: false };
    shop.set({ register: 'batch', id: v.parse(batchId, `b${count}`), value });
  }
  // Batch 8 is first, though its text comes after that of batch 10.
  expect(liveStages(shop.shop.registers).map(String)).toEqual(['sand', 'wax', 'bore', 'turn']);
});
