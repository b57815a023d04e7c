import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CommandOf } from '../../../src/domain/command/command.ts';
import { stagesToAskAbout } from '../../../src/domain/command/decide-set-up.ts';
import type { StageId, TrayId } from '../../../src/domain/log/ids.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { aWorkshop, backTo, lowered, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { route, routeStages, type StageName, stage } from '../../support/workshop.ts';

const idsOf = (names: readonly StageName[]) => names.map((name) => stage[name]);
const without = (...gone: readonly StageName[]) => routeStages.filter((name) => !gone.includes(name));

function change(
  stages: readonly StageName[],
  destinations: Partial<Record<StageName, StageName>> = {},
): CommandOf<'change-route'> {
  const entries = Object.entries(destinations) as [StageName, StageName][];
  const answers = new Map(entries.map(([from, to]): [StageId, StageId] => [stage[from], stage[to]]));
  return {
    kind: 'change-route',
    route: route.haft,
    name: 'Haft',
    stages: idsOf(stages),
    destinations: answers,
  };
}

const standing = (shop: TestShop, tray: TrayId) =>
  [...placesOf(shop.shop.positions, tray).values()]
    .filter(({ pieces }) => pieces !== 0)
    .map(({ place, pieces }) => ({ ...place, pieces }));

const asked = (shop: TestShop, stages: readonly StageName[]) =>
  stagesToAskAbout(shop.shop, { route: route.haft, stages: idsOf(stages) });

/** Five pieces to bore, three to glue of which two cure, one to turn. */
function inWork() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 9);
  shop.pass(tray, 'bore', { pieces: 4 });
  shop.load(tray, 'glue', { pieces: 2 });
  shop.pass(tray, 'glue');
  return { shop, tray };
}

describe('a new order of the stages asks where pieces go', () => {
  test('not when a stage without pieces is added, taken away or moved', () => {
    const { shop } = inWork();
    expect(asked(shop, [...routeStages, 'wax'])).toEqual([]);
    expect(asked(shop, ['wax', ...routeStages])).toEqual([]);
    expect(asked(shop, without('photo'))).toEqual([]);
    expect(asked(shop, ['bore', 'glue', 'turn', 'grade', 'sand', 'photo'])).toEqual([]);
  });

  test('when a stage that holds pieces is taken away, those that cure among them', () => {
    const { shop } = inWork();
    expect(asked(shop, without('glue'))).toEqual([{ stage: 'glue', pieces: 3, gone: true }]);
  });

  test('when a stage moves past stages that hold pieces: at each of these', () => {
    const { shop } = inWork();
    expect(asked(shop, ['turn', 'bore', 'glue', 'sand', 'grade', 'photo'])).toEqual([
      { stage: 'bore', pieces: 5, gone: false },
      { stage: 'glue', pieces: 3, gone: false },
      { stage: 'turn', pieces: 1, gone: false },
    ]);
  });

  test('of its own batches only', () => {
    const { shop } = inWork();
    shop.tray('ash-copper', 4, 'autumn');
    expect(asked(shop, without('turn'))).toEqual([{ stage: 'turn', pieces: 1, gone: true }]);
  });
});

describe('changing the route', () => {
  test('is refused while it is not said where the pieces go', () => {
    const { shop } = inWork();
    const problem = { kind: 'stage-still-holds', stages: [{ stage: 'glue', pieces: 3, gone: true }] };
    expect(shop.refusal(change(without('glue')))).toEqual(problem);
    expect(shop.refusal(change(without('glue'), { glue: 'glue' }))).toEqual(problem);
    expect(shop.refusal(change(without('glue'), { glue: 'wax' }))).toEqual(problem);
  });

  test('brings the pieces where it is said, of whichever grade; what cured waits again', () => {
    const { shop, tray } = inWork();
    shop.flaw(tray, 'bore', { why: 'tear-out', outcome: lowered });
    shop.act(change(without('glue'), { glue: 'turn' }));
    const rows = standing(shop, tray).map((each) => [each.at, 'stage' in each && each.stage, each.pieces]);
    expect(rows.toSorted()).toEqual([
      ['waiting', 'bore', 4],
      ['waiting', 'turn', 1],
      ['waiting', 'turn', 4],
    ]);
    shop.pass(tray, 'bore');
    expect(shop.log.at(-1)).toMatchObject({ moves: [{ to: { stage: 'turn' } }] });
  });

  test('lets pieces stay at a stage that has only moved', () => {
    const { shop, tray } = inWork();
    const before = standing(shop, tray);
    const stages: readonly StageName[] = ['turn', 'bore', 'glue', 'sand', 'grade', 'photo'];
    const events = shop.act(change(stages, { turn: 'turn', bore: 'bore', glue: 'glue' }));
    expect(events.map(({ kind }) => kind)).toEqual(['set-up']);
    expect(standing(shop, tray)).toEqual(before);
  });

  test('does not move pieces by an answer that is asked for no more', () => {
    const { shop, tray } = inWork();
    const before = standing(shop, tray);
    shop.act(change([...routeStages, 'wax'], { bore: 'photo', glue: 'wax' }));
    expect(standing(shop, tray)).toEqual(before);
  });

  test('takes a count below zero along, so that it is still to be recounted', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.pass(tray, 'bore', { pieces: 3, shown: 3 });
    shop.act(change(without('bore'), { bore: 'turn' }));
    expect(standing(shop, tray)).toMatchObject([
      { stage: 'glue', pieces: 3 },
      { stage: 'turn', pieces: -2 },
    ]);
  });

  test('forgets that a piece comes again when the stage that had sent it is gone', () => {
    const { shop, tray } = inWork();
    shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('bore') });
    shop.act(change(without('turn', 'bore'), { bore: 'glue' }));
    expect(standing(shop, tray).filter((each) => each.at === 'waiting')).toMatchObject([
      { stage: 'glue', redo: null, pieces: expect.any(Number) },
    ]);
  });

  test('names a stage once, however often it was chosen', () => {
    const { shop } = inWork();
    shop.act(change([...routeStages, 'bore', 'photo']));
    expect(shop.log.at(-1)).toMatchObject({ set: { value: { stages: [...routeStages] } } });
  });

  test('is refused without stages, without a name, and with the name of another route', () => {
    const { shop } = inWork();
    expect(shop.refusal(change([]))).toEqual({ kind: 'route-is-empty' });
    expect(shop.refusal({ ...change(routeStages), name: ' ' })).toEqual({
      kind: 'text',
      problem: { kind: 'empty' },
    });
    expect(shop.refusal({ ...change(routeStages), name: 'short' })).toEqual({ kind: 'same-name' });
  });

  test('is refused with more stages than a route can have', () => {
    const { shop } = inWork();
    const many = Array.from({ length: 61 }, (_, index) => `stage-${index}` as StageId);
    expect(shop.refusal({ ...change([]), stages: many })).toEqual({
      kind: 'number',
      problem: { kind: 'too-large', most: 60 },
    });
  });

  test('on two tablets at once keeps every piece where one of them has put it', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const tray = bench.tray('ash-copper', 4);
    meet(bench, office);
    bench.act(change(without('bore'), { bore: 'glue' }));
    office.act(change(without('bore'), { bore: 'turn' }));
    meet(bench, office);
    expect(standing(bench, tray)).toEqual(expect.arrayContaining(standing(office, tray)));
    expect(standing(bench, tray).reduce((sum, { pieces }) => sum + pieces, 0)).toBe(4);
  });
});

describe('whatever the new order and the answers', () => {
  const anyRoute = fc.uniqueArray(fc.constantFrom<StageName>(...routeStages, 'wax'), { minLength: 1 });
  const answers = fc.array(fc.nat(), { minLength: 7, maxLength: 7 });

  test('no piece is lost, and every piece stands at a stage of the new route', () => {
    fc.assert(
      fc.property(anyRoute, answers, (stages, picks) => {
        const { shop, tray } = inWork();
        shop.flaw(tray, 'turn', { why: 'gap', outcome: backTo('glue') });
        const before = standing(shop, tray).reduce((sum, { pieces }) => sum + pieces, 0);
        const destinations = Object.fromEntries(
          asked(shop, stages).map((each, index) => [each.stage, stages[(picks[index] ?? 0) % stages.length]]),
        );
        shop.act(change(stages, destinations));
        const after = standing(shop, tray);
        expect(after.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(before);
        expect(stages).toEqual(expect.arrayContaining(after.map((each) => 'stage' in each && each.stage)));
      }),
      { numRuns: 300 },
    );
  });
});
