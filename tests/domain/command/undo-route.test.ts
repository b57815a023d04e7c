import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stagesToAskAbout } from '../../../src/domain/command/decide-set-up.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import type { StageId, TrayId } from '../../../src/domain/log/ids.ts';
import { placesOf } from '../../../src/domain/shop/positions.ts';
import { factOf } from '../../../src/domain/shop/registers.ts';
import { aWorkshop, isVoidable, lowered, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { route, routeStages, type StageName, stage } from '../../support/workshop.ts';

const without = (...gone: readonly StageName[]) => routeStages.filter((name) => !gone.includes(name));
const routeOf = ({ shop }: TestShop) => factOf(shop.registers, { register: 'route', id: route.haft });

const counts = ({ shop }: TestShop, tray: TrayId) =>
  [...placesOf(shop.positions, tray).values()]
    .filter(({ pieces }) => pieces !== 0)
    .map(({ place, pieces }) => `${'stage' in place ? place.stage : place.at} ${place.at} ${pieces}`)
    .sort();

function change(
  shop: TestShop,
  stages: readonly StageName[],
  { to = {}, name = 'Haft' }: { to?: Partial<Record<StageName, StageName>>; name?: string } = {},
) {
  const entries = Object.entries(to) as [StageName, StageName][];
  return shop.act({
    kind: 'change-route',
    route: route.haft,
    name,
    stages: stages.map((each) => stage[each]),
    destinations: new Map(entries.map(([from, into]): [StageId, StageId] => [stage[from], stage[into]])),
  });
}

const refused = (shop: TestShop, events: readonly ShopEvent[]) =>
  expect(shop.refusal({ kind: 'undo', events: events.filter(isVoidable) })).toEqual({
    kind: 'cannot-be-taken-back',
  });

/** Two trays, of four and of three, at the boring; on the first one piece is at the glue. */
function inWork(shop = aWorkshop()) {
  const first = shop.tray('ash-copper', 4);
  shop.pass(shop.tray('ash-copper', 3), 'bore');
  const [, second] = [...shop.shop.trays.keys()];
  if (!second) throw new Error('two trays');
  return { shop, first, second, state: () => [routeOf(shop), counts(shop, first), counts(shop, second)] };
}

describe('taking back a change of route', () => {
  test('brings back the route, its name and the pieces, and putting it back changes them again', () => {
    const { shop, state } = inWork();
    const before = state();
    const changed = change(shop, without('bore'), { to: { bore: 'turn' }, name: 'Short haft' });
    const after = state();
    expect(after).not.toEqual(before);
    const undo = shop.undo(changed);
    expect(state()).toEqual(before);
    const again = shop.undo(undo);
    expect(state()).toEqual(after);
    shop.undo(again);
    expect(state()).toEqual(before);
  });

  test('brings back the route on every tablet, whatever their clocks say', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const { state } = inWork(bench);
    const before = state();
    bench.later(20 * 365 * 24 * 60);
    const changed = change(bench, without('bore'), { to: { bore: 'turn' } });
    meet(bench, office);
    office.undo(changed);
    meet(bench, office);
    expect(state()).toEqual(before);
    expect(routeOf(office)).toEqual(routeOf(bench));
  });

  test('on two tablets before they meet does it once; putting it back on either changes nothing while the other stands', () => {
    const [bench, office] = tablets('A', 'C');
    if (!bench || !office) throw new Error('two tablets');
    const { state } = inWork(bench);
    const before = state();
    const changed = change(bench, without('bore'), { to: { bore: 'turn' } });
    meet(bench, office);
    const [here, there] = [bench.undo(changed), office.undo(changed)];
    meet(bench, office);
    expect(state()).toEqual(before);
    for (const [tablet, undo] of [
      [bench, here],
      [office, there],
    ] as const) {
      const back = tablet.undo(undo);
      expect(routeOf(tablet)).toEqual(before[0]);
      tablet.undo(back);
    }
    meet(bench, office);
    expect(state()).toEqual(before);
  });

  test('of which another word on the route has come since leaves that word, and is refused where it would strand pieces', () => {
    const { shop, state } = inWork();
    const changed = change(shop, without('bore'), { to: { bore: 'turn' } });
    change(shop, [...without('bore'), 'wax']);
    const now = state();
    refused(shop, changed);
    expect(state()).toEqual(now);
  });

  test('of which another word has come that has the stage again takes back the moves alone', () => {
    const { shop, first } = inWork();
    const changed = change(shop, without('bore'), { to: { bore: 'turn' } });
    change(shop, [...routeStages, 'wax']);
    const now = routeOf(shop);
    shop.undo(changed);
    expect(routeOf(shop)).toEqual(now);
    expect(counts(shop, first)).toEqual(['bore waiting 4']);
  });

  test('is refused when pieces have come to a stage that only the new route has', () => {
    const { shop, first } = inWork();
    const stages = ['wax', ...without('bore')] as const;
    const changed = change(shop, stages, { to: { bore: 'wax', glue: 'glue' } });
    const late = shop.tray('ash-copper', 2);
    expect(counts(shop, late)).toEqual(['wax waiting 2']);
    refused(shop, changed);
    shop.pass(late, 'wax', { pieces: 2 });
    shop.undo(changed);
    expect(counts(shop, first)).toEqual(['bore waiting 4']);
  });

  test('is refused when a piece that it moved has gone on from a stage that only the new route has', () => {
    const { shop, first } = inWork();
    const changed = change(shop, ['wax', ...without('bore')], { to: { bore: 'wax', glue: 'glue' } });
    const pass = shop.pass(first, 'wax');
    refused(shop, changed);
    shop.undo(pass);
    shop.undo(changed);
    expect(counts(shop, first)).toEqual(['bore waiting 4']);
  });

  test('of one tray alone leaves the route, and is refused when its stage is gone', () => {
    const { shop, state } = inWork();
    const [, one] = change(shop, without('bore'), { to: { bore: 'turn' } });
    const now = state();
    if (!one) throw new Error('a tray is moved');
    refused(shop, [one]);
    expect(state()).toEqual(now);
    const kept = inWork();
    const stages = ['glue', 'bore', 'turn', 'sand', 'grade', 'photo'] as const;
    const [, moved] = change(kept.shop, stages, { to: { bore: 'turn', glue: 'glue' } });
    if (!moved) throw new Error('a tray is moved');
    kept.shop.undo([moved]);
    expect(routeOf(kept.shop)?.stages).toEqual(stages);
  });

  test('takes no notice of a change that moved nothing', () => {
    const { shop } = inWork();
    const changed = change(shop, [...routeStages, 'wax']);
    expect(changed).toMatchObject([{ kind: 'set-up' }]);
    expect(changed[0]).not.toHaveProperty('replaced');
    expect(shop.refusal({ kind: 'undo', events: changed.filter(isVoidable) }).kind).toBe(
      'already-taken-back',
    );
  });

  test('written by an older version, which kept no word of the route before, takes back the moves where they strand nothing', () => {
    const { shop, first } = inWork();
    const draft = shop.judge({
      kind: 'change-route',
      route: route.haft,
      name: 'Haft',
      stages: ['glue', 'bore', 'turn', 'sand', 'grade', 'photo'].map((each) => stage[each as StageName]),
      destinations: new Map([
        [stage.bore, stage.turn],
        [stage.glue, stage.glue],
      ]),
    });
    if (draft.kind === 'refused') throw new Error('refused');
    const changed = shop.record(
      draft.drafts.map((each) => {
        if (each.kind !== 'set-up') return each;
        const { replaced, rev, ...old } = each;
        return { ...old, rev: rev ?? 0 };
      }),
    );
    const now = routeOf(shop);
    shop.undo(changed);
    expect([routeOf(shop), counts(shop, first)]).toEqual([now, ['bore waiting 4']]);
  });
});

describe('whatever the new order and the answers', () => {
  const anyRoute = fc.uniqueArray(fc.constantFrom<StageName>(...routeStages, 'wax'), { minLength: 1 });
  const answers = fc.array(fc.nat(), { minLength: 7, maxLength: 7 });

  test('an undo at once brings all back, and its undo the change', () => {
    fc.assert(
      fc.property(anyRoute, answers, (stages, picks) => {
        const { shop, first, second, state } = inWork();
        shop.load(second, 'glue');
        shop.flaw(first, 'bore', { why: 'tear-out', outcome: lowered });
        const before = state();
        const asked = stagesToAskAbout(shop.shop, {
          route: route.haft,
          stages: stages.map((each) => stage[each]),
        });
        const to = Object.fromEntries(
          asked.map((each, index) => [each.stage, stages[(picks[index] ?? 0) % stages.length]]),
        );
        const changed = change(shop, stages, { to });
        if (changed.length === 1) return;
        const after = state();
        const undo = shop.undo(changed);
        expect(state()).toEqual(before);
        shop.undo(undo);
        expect(state()).toEqual(after);
      }),
      { numRuns: 200 },
    );
  });
});
