import { expect, test } from 'vitest';
import { shareValue } from '../../../src/domain/rollup/first-pass-yield.ts';
import {
  flawsByReason,
  flowAlongRoute,
  traysBehind,
  woodsWorstFirst,
} from '../../../src/screens/yield/yield-view.ts';
import { aWorkshop, lowered, meet, scrapped, tablets } from '../../support/a-shop.ts';
import { route, routeStages, species, stage } from '../../support/workshop.ts';

function twoWoods() {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 10);
  const plum = shop.tray('plum-copper', 6);
  shop.pass(ash, 'bore', { pieces: 8 });
  shop.flaw(ash, 'bore', { why: 'blown', outcome: scrapped() });
  shop.pass(plum, 'bore', { pieces: 3 });
  shop.flaw(plum, 'bore', { why: ['blown', 'tear-out'], outcome: lowered, pieces: 2 });
  return { shop, ash, plum };
}

test('the flow follows the route, with the wood of most pieces first at each stage', () => {
  const { shop } = twoWoods();
  const flow = flowAlongRoute(shop.shop);
  expect(flow.slice(0, routeStages.length).map((each) => `${each.stage}`)).toEqual([...routeStages]);
  const glue = flow.find((each) => each.stage === stage.glue);
  expect(glue?.total).toBe(13);
  expect(glue?.cells.map((cell) => [`${cell.species}`, cell.waiting])).toEqual([
    ['ash', 8],
    ['plum', 5],
  ]);
});

test('a stage that no route has any more is shown as stranded while pieces stand there', () => {
  const [one, other] = tablets('A', 'C');
  if (!one || !other) throw new Error('two tablets');
  one.tray('ash-copper', 2);
  // The other tablet does not know of the pieces yet, and takes the boring off the route.
  const stages = routeStages.filter((name) => name !== 'bore').map((name) => stage[name]);
  other.act({ kind: 'change-route', route: route.haft, name: 'Haft', stages, destinations: new Map() });
  meet(one, other);
  const stranded = flowAlongRoute(one.shop).filter((each) => each.stranded);
  expect(stranded.map((each) => [`${each.stage}`, each.total])).toEqual([['bore', 2]]);
});

test('behind a block of the flow stand the trays that it is made of', () => {
  const { shop, plum } = twoWoods();
  const more = shop.tray('plum-copper', 4);
  shop.pass(more, 'bore', { pieces: 1 });
  expect(
    traysBehind(shop.shop, { stage: stage.glue, species: species.plum }).map(({ tray, pieces }) => [
      tray.tray,
      pieces,
    ]),
  ).toEqual([
    [plum, 5],
    [more, 1],
  ]);
});

test('each wood shows its worst stage first', () => {
  const { shop, ash } = twoWoods();
  shop.load(ash, 'glue', { pieces: 8 });
  shop.pass(ash, 'glue', { pieces: 8, held: true });
  shop.flaw(ash, 'turn', { why: 'catch', outcome: scrapped(), pieces: 4 });
  shop.pass(ash, 'turn', { pieces: 4 });
  const wood = woodsWorstFirst(shop.shop).find((each) => each.species === species.ash);
  expect(wood?.stages.map((each) => [`${each.stage}`, shareValue(each.share)])).toEqual([
    ['turn', 0.5],
    ['bore', 8 / 9],
    ['glue', 1],
  ]);
});

test('flaws stand by reason with the most frequent first; a piece with two reasons stands under both', () => {
  const { shop } = twoWoods();
  expect(
    flawsByReason(shop.shop).map(({ reason, total, bySpecies }) => [
      `${reason}`,
      total,
      bySpecies.get(species.plum),
    ]),
  ).toEqual([
    ['blown', 3, 2],
    ['tear-out', 2, 2],
  ]);
});
