import * as v from 'valibot';
import { expect, test } from 'vitest';
import { targetsTable } from '../../../src/domain/export/targets-table.ts';
import { shopDayText } from '../../../src/domain/log/ids.ts';
import { judgeTargets } from '../../../src/domain/plan/targets/judge-targets.ts';
import { batchTargets, flyingOf } from '../../../src/domain/rollup/batch-targets.ts';
import { nameOf } from '../../../src/words/names.ts';
import { aWorkshop, backTo, lowered, scrapped } from '../../support/a-shop.ts';
import { batch, route, stage, variant } from '../../support/workshop.ts';

function inWork() {
  const shop = aWorkshop();
  const due = v.parse(shopDayText, '2026-04-30');
  const wanted = [{ variant: variant['ash-copper'], good: 20 }];
  const spring = { name: 'spring', route: route.haft, wanted, due, retired: false };
  shop.set({ register: 'batch', id: batch.spring, value: spring });
  const tray = shop.tray('ash-copper', 12);
  return { shop, tray, spring };
}

test('what is wanted stands beside what there is: by grade, and by the stage that tries a piece next', () => {
  const { shop, tray } = inWork();
  shop.pass(tray, 'bore', { pieces: 9 });
  shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered });
  const [spring] = batchTargets(shop.shop);
  expect(spring).toMatchObject({ batch: batch.spring, due: '2026-04-30', chance: 90 });
  expect(spring?.variants).toHaveLength(1);
  expect(spring?.variants[0]).toMatchObject({
    wanted: 20,
    finished: { first: 0, second: 0 },
    scrapped: 1,
    inFlight: [
      { stage: stage.bore, pieces: { first: 1, second: 0 } },
      { stage: stage.glue, pieces: { first: 9, second: 1 } },
    ],
  });
  expect(spring?.variants.map(flyingOf)).toEqual([{ first: 10, second: 1 }]);
});

test('a piece that was sent back stands at the stage that sent it', () => {
  const { shop, tray } = inWork();
  shop.pass(tray, 'bore', { pieces: 12 });
  shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), pieces: 2 });
  const [spring] = batchTargets(shop.shop);
  expect(spring?.variants[0]?.inFlight).toEqual([
    { stage: stage.glue, pieces: { first: 12, second: 0 }, sentBack: 2 },
  ]);
});

test('pieces of what nobody asked for are told with none wanted; a batch that is put away is not told', () => {
  const { shop, spring } = inWork();
  shop.tray('plum-copper', 3);
  const rows = () =>
    batchTargets(shop.shop).map(({ name, variants }) => [name, variants.map((each) => each.wanted)]);
  expect(rows()).toEqual([
    ['spring', [20, 0]],
    ['autumn', []],
  ]);
  shop.set({ register: 'batch', id: batch.spring, value: { ...spring, retired: true } });
  expect(rows()).toEqual([['autumn', []]]);
});

test('the table of targets, read back, changes nothing', () => {
  const { shop } = inWork();
  shop.tray('plum-copper', 3);
  const { rows } = targetsTable(shop.shop, (fact) => nameOf(shop.shop.registers, fact));
  expect(rows).toHaveLength(2);
  const lines = rows.map(([name, what, good, due, chance], at) => ({
    ...{ line: at + 2, batch: String(name), variant: String(what), good: String(good) },
    ...{ due: String(due ?? ''), chance: String(chance) },
  }));
  const judged = judgeTargets(shop.shop, lines);
  expect(judged.map((each) => each.kind === 'understood' && each.changes)).toEqual([{}, {}]);
});
