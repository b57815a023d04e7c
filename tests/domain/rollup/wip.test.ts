import { describe, expect, test } from 'vitest';
import type { StageId } from '../../../src/domain/log/ids.ts';
import { strandedStages, workInProcess } from '../../../src/domain/rollup/wip.ts';
import { aWorkshop, lowered, meet, tablets } from '../../support/a-shop.ts';
import { batch, route, routeStages, stage } from '../../support/workshop.ts';

describe('work in process', () => {
  test('counts each wood at each stage, over trays and variants; seconds are among the waiting and held', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.tray('ash-nickel', 2);
    const plum = shop.tray('plum-copper', 3);
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
    shop.load(tray, 'glue', { pieces: 2 });
    shop.load(tray, 'glue', { grade: 'second' });
    shop.pass(plum, 'bore', { pieces: 3 });
    const rows = workInProcess(shop.shop).map((cell) => Object.values(cell).join(' '));
    expect(rows.toSorted()).toEqual(['bore ash 4 0 0', 'glue ash 1 3 1', 'glue plum 3 0 0']);
  });

  test('leaves out a stage that is empty again, and shows a count below zero', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2);
    shop.pass(tray, 'bore', { pieces: 2 });
    expect(workInProcess(shop.shop).map((cell) => cell.stage)).toEqual(['glue']);
    shop.pass(tray, 'bore', { pieces: 1, shown: 1 });
    expect(workInProcess(shop.shop)).toContainEqual({
      stage: 'bore',
      species: 'ash',
      waiting: -1,
      held: 0,
      seconds: 0,
    });
  });

  test('finished and scrapped pieces are in process no more', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 2, 'autumn');
    shop.pass(tray, 'turn');
    shop.pass(tray, 'sand');
    shop.flaw(tray, 'turn', { why: 'blown', outcome: { kind: 'scrapped', saved: [] } });
    expect(workInProcess(shop.shop)).toEqual([]);
  });
});

describe('stranded pieces', () => {
  const routes: ReadonlySet<StageId> = new Set(routeStages.map((name) => stage[name]));

  test('there are none while every stage that holds pieces is on a route', () => {
    const shop = aWorkshop();
    shop.tray('ash-copper', 2);
    expect(strandedStages(shop.shop, routes)).toEqual([]);
  });

  test('stand where one tablet put them while another took the stage off the route', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 2);
    meet(bench, office);
    bench.pass(tray, 'bore', { pieces: 2 });
    const stages = routeStages.filter((name) => name !== 'glue').map((name) => stage[name]);
    office.act({ kind: 'change-route', route: route.haft, name: 'Haft', stages, destinations: new Map() });
    meet(bench, office);
    expect(strandedStages(bench.shop, new Set(stages))).toEqual([stage.glue]);
    expect(bench.shop.trays.get(tray)?.batch).toBe(batch.spring);
  });
});
