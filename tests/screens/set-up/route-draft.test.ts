import { describe, expect, test } from 'vitest';
import type { StageId } from '../../../src/domain/log/ids.ts';
import type { RouteFact } from '../../../src/domain/set-up/facts.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import {
  answersOf,
  looseParts,
  putBack,
  type RouteDraft,
  rebased,
  routeDraftOf,
  routeRows,
  stagesToAdd,
  unanswered,
} from '../../../src/screens/set-up/route-draft.ts';
import { piecesAtStages } from '../../../src/screens/set-up/set-up-view.ts';
import { aWorkshop, type TestShop } from '../../support/a-shop.ts';
import { route, routeStages, stage, variant } from '../../support/workshop.ts';

const whole = routeStages.map((name) => stage[name]);

/** Ten pieces: six wait at the boring, one waits for the glue, three cure. */
function running() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 10);
  shop.pass(tray, 'bore', { pieces: 4 });
  shop.load(tray, 'glue', { pieces: 3 });
  return shop;
}

const fact = ({ shop }: TestShop): RouteFact | undefined =>
  factOf(shop.registers, { register: 'route', id: route.haft });
const begin = (shop: TestShop): RouteDraft => routeDraftOf(fact(shop));
const without = (draft: RouteDraft, ...gone: readonly StageId[]): RouteDraft => ({
  ...draft,
  stages: draft.stages.filter((each) => !gone.includes(each)),
});
const send = (draft: RouteDraft, from: StageId, to: StageId): RouteDraft => ({
  ...draft,
  destinations: new Map([...draft.destinations, [from, to]]),
});
const rowsOf = (shop: TestShop, draft: RouteDraft) => routeRows(shop.shop, { route: route.haft, draft });
const save = (shop: TestShop, draft: RouteDraft) =>
  shop.act({
    kind: 'change-route',
    route: route.haft,
    name: draft.name,
    stages: draft.stages,
    destinations: answersOf(rowsOf(shop, draft)),
  });

test('a route that nobody has touched shows its stages in order with their pieces, and asks nothing', () => {
  const shop = running();
  const rows = rowsOf(shop, begin(shop));
  expect(rows.map(({ stage: id, place }) => [id, place])).toEqual(whole.map((id, place) => [id, place]));
  expect(rows.map(({ pieces }) => pieces)).toEqual([6, 4, 0, 0, 0, 0]);
  expect(unanswered(rows)).toEqual([]);
});

describe('a stage that is taken off', () => {
  test('asks where its pieces go, and stands where it stood until that is saved', () => {
    const shop = running();
    const rows = rowsOf(shop, without(begin(shop), stage.glue));
    expect(rows[1]).toEqual({
      stage: stage.glue,
      place: null,
      pieces: 4,
      ask: { pieces: 4, gone: true, to: undefined },
    });
    expect(unanswered(rows)).toEqual([stage.glue]);
    expect(rows.map(({ place }) => place)).toEqual([0, null, 1, 2, 3, 4]);
  });

  test('and is the first of the route stands at the top', () => {
    const shop = running();
    expect(rowsOf(shop, without(begin(shop), stage.bore))[0]?.stage).toBe(stage.bore);
  });

  test('without pieces asks nothing and can be put on again', () => {
    const shop = running();
    const rows = rowsOf(shop, without(begin(shop), stage.sand));
    expect(rows.map(({ stage: id }) => id)).not.toContain(stage.sand);
    expect(stagesToAdd(shop.shop.registers, rows).map(({ id }) => id)).toEqual([stage.sand, stage.wax]);
  });

  test('comes back to where it stood', () => {
    const shop = running();
    expect(putBack(without(begin(shop), stage.glue), stage.glue)).toEqual(whole);
    expect(putBack(without(begin(shop), stage.bore), stage.bore)).toEqual(whole);
    expect(putBack(without(begin(shop), stage.glue, stage.turn), stage.turn)).toEqual(
      whole.filter((id) => id !== stage.glue),
    );
  });
});

test('a stage that is moved past another asks too, and staying is an answer', () => {
  const shop = running();
  const [bore, glue, ...others] = whole;
  if (!bore || !glue) throw new Error('no such stages');
  const draft = { ...begin(shop), stages: [glue, bore, ...others] };
  expect(unanswered(rowsOf(shop, draft))).toEqual([glue, bore]);
  const answered = send(send(draft, glue, glue), bore, bore);
  expect(unanswered(rowsOf(shop, answered))).toEqual([]);
  save(shop, answered);
  expect(piecesAtStages(shop.shop)).toEqual(
    new Map([
      [stage.bore, 6],
      [stage.glue, 4],
    ]),
  );
});

test('an answer that names a stage which was taken off since is asked for again', () => {
  const shop = running();
  const draft = send(without(begin(shop), stage.glue), stage.glue, stage.turn);
  expect(unanswered(rowsOf(shop, draft))).toEqual([]);
  expect(unanswered(rowsOf(shop, without(draft, stage.turn)))).toEqual([stage.glue]);
});

test('an answer for a stage that was put back moves no piece', () => {
  const shop = running();
  const answered = send(without(begin(shop), stage.glue), stage.glue, stage.turn);
  const back = { ...answered, name: 'Hafts', stages: putBack(answered, stage.glue) };
  expect(answersOf(rowsOf(shop, back)).size).toBe(0);
  save(shop, back);
  expect(piecesAtStages(shop.shop)).toEqual(
    new Map([
      [stage.bore, 6],
      [stage.glue, 4],
    ]),
  );
});

test('when two stages leave in the middle of a batch, every piece is where the maker sent it', () => {
  const shop = running();
  const draft = send(
    send(without(begin(shop), stage.bore, stage.glue), stage.bore, stage.turn),
    stage.glue,
    stage.sand,
  );
  save(shop, draft);
  expect(piecesAtStages(shop.shop)).toEqual(
    new Map([
      [stage.turn, 6],
      [stage.sand, 4],
    ]),
  );
});

describe('a draft that was begun before the route was changed elsewhere', () => {
  test('takes in a stage that came, next to the neighbour that it has there', () => {
    const draft = { ...routeDraftOf({ name: 'Haft', stages: whole }), stages: whole.toReversed() };
    const now = { name: 'Haft', stages: [stage.bore, stage.wax, ...whole.slice(1)] };
    const result = rebased(draft, now);
    expect(result.stages).toEqual([...whole.toReversed(), stage.wax]);
    expect(result.from).toEqual(now.stages);
  });

  test('lets go of a stage that went, and keeps what was taken off here', () => {
    const draft = without(routeDraftOf({ name: 'Haft', stages: whole }), stage.photo);
    const now = { name: 'Haft', stages: whole.filter((id) => id !== stage.sand) };
    expect(rebased(draft, now).stages).toEqual([stage.bore, stage.glue, stage.turn, stage.grade]);
  });

  test('is the same draft while the order is the same', () => {
    const draft = without(routeDraftOf({ name: 'Haft', stages: whole }), stage.photo);
    expect(rebased(draft, { name: 'Renamed', stages: whole })).toBe(draft);
  });
});

test('a stage that leaves is told to the variants whose parts it fits', () => {
  const shop = running();
  const loose = looseParts(shop.shop.registers, without(begin(shop), stage.sand, stage.photo));
  expect(loose.map((each) => [each.variant.id, each.stage])).toEqual([
    [variant['ash-copper'], stage.sand],
    [variant['ash-nickel'], stage.sand],
    [variant['plum-copper'], stage.sand],
  ]);
  expect(looseParts(shop.shop.registers, begin(shop))).toEqual([]);
});
