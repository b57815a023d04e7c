import { describe, expect, test } from 'vitest';
import { startingFacts } from '../../../src/app/starting-shop.ts';
import { factOf, factsOf } from '../../../src/domain/shop/registers.ts';
import { sectionNames } from '../../../src/screens/set-up/sections.ts';
import {
  curingAt,
  firstSteps,
  inRouteOrder,
  liveCount,
  piecesAtStages,
  piecesOfBatch,
  piecesOnRoute,
  whyStageStays,
} from '../../../src/screens/set-up/set-up-view.ts';
import { aShop, aWorkshop, type TestShop } from '../../support/a-shop.ts';
import { batch, part, route, setUpFacts, species, stage, variant } from '../../support/workshop.ts';

/** What a newcomer is told to do next, and what is ticked off. */
function told({ shop }: TestShop) {
  const steps = firstSteps(shop);
  return {
    next: steps.find(({ done }) => !done)?.name,
    done: steps.filter(({ done }) => done).map(({ name }) => name),
  };
}

function newShop(): TestShop {
  const shop = aShop();
  for (const set of startingFacts('UTC')) shop.set(set);
  return shop;
}

function setOf(register: 'species' | 'variant', id: string) {
  const found = setUpFacts.find((set) => set.register === register && set.id === id);
  if (!found) throw new Error(`no ${register} ${id}`);
  return found;
}

const ferrule = { name: 'Copper ferrule', sort: 'ferrule', retired: false } as const;

describe('a newcomer', () => {
  test('is led from the wood to the ferrule, the variant and the first tray', () => {
    const shop = newShop();
    expect(told(shop)).toEqual({ next: 'wood', done: [] });
    shop.set(setOf('species', species.ash));
    expect(told(shop)).toEqual({ next: 'ferrule', done: ['wood'] });
    shop.set({ register: 'part', id: part['copper-ferrule'], value: ferrule });
    expect(told(shop)).toEqual({ next: 'variant', done: ['wood', 'ferrule'] });
    shop.set(setOf('variant', variant['ash-copper']));
    expect(told(shop)).toEqual({ next: 'tray', done: ['wood', 'ferrule', 'variant'] });
  });

  test('who makes handles without ferrules is not asked for one', () => {
    const shop = newShop();
    shop.set(setOf('species', species.ash));
    shop.set(setOf('variant', variant['ash-copper']));
    expect(told(shop).next).toBe('tray');
  });

  test('who has put everything away begins again', () => {
    const shop = newShop();
    const ash = setOf('species', species.ash);
    shop.set(ash);
    if (ash.register === 'species') shop.set({ ...ash, value: { ...ash.value, retired: true } });
    expect(told(shop).next).toBe('wood');
  });

  test('who has no batch, or a batch without stages, is told so first', () => {
    const shop = aShop();
    expect(told(shop).next).toBe('batch');
    shop.set({
      register: 'batch',
      id: batch.spring,
      value: { name: 'Spring', route: route.haft, wanted: [], due: null, retired: false },
    });
    expect(told(shop).next).toBe('stages');
  });

  test('who has made up a tray is led no longer', () => {
    const shop = aWorkshop();
    shop.tray('ash-copper', 3);
    expect(firstSteps(shop.shop)).toEqual([]);
  });
});

test('each section counts what is in use; the tablet and the cautions count nothing', () => {
  const shop = aWorkshop();
  const ash = factOf(shop.shop.registers, { register: 'species', id: species.ash });
  if (ash) shop.set({ register: 'species', id: species.ash, value: { ...ash, retired: true } });
  const { registers } = shop.shop;
  expect(Object.fromEntries(sectionNames.map((name) => [name, liveCount(registers, name)]))).toEqual({
    woods: 2,
    parts: 0,
    variants: 3,
    reasons: 0,
    people: 0,
    resources: 0,
    machines: 0,
    stages: 7,
    route: 2,
    batches: 2,
    tablet: undefined,
    about: undefined,
  });
});

describe('pieces in work', () => {
  const shop = aWorkshop();
  const first = shop.tray('ash-copper', 10);
  shop.pass(first, 'bore', { pieces: 6 });
  shop.load(first, 'glue', { pieces: 4 });
  shop.tray('plum-copper', 5, 'autumn');

  test('are counted by stage over all batches, on one route and of one batch', () => {
    expect(piecesAtStages(shop.shop)).toEqual(
      new Map([
        [stage.bore, 4],
        [stage.glue, 6],
        [stage.turn, 5],
      ]),
    );
    expect(piecesOnRoute(shop.shop, route.short)).toEqual(new Map([[stage.turn, 5]]));
    expect(piecesOfBatch(shop.shop, batch.spring)).toEqual(
      new Map([
        [stage.bore, 4],
        [stage.glue, 6],
      ]),
    );
  });

  test('that cure are told from those that wait for a place', () => {
    expect(curingAt(shop.shop, stage.glue)).toBe(4);
    expect(curingAt(shop.shop, stage.bore)).toBe(0);
  });

  test('keep their stage from being put away, and so does a route', () => {
    expect(whyStageStays(shop.shop, stage.bore)).toEqual({ kind: 'on-route' });
    expect(whyStageStays(shop.shop, stage.wax)).toBeNull();
  });
});

test('a stage off every route that still holds pieces cannot be put away', () => {
  // Two tablets: one takes the sanding off the route while the other passes a piece to it.
  const [a, b] = [aWorkshop({ station: 'one' }), aShop({ station: 'two', letter: 'C' })];
  b.receive(a.log);
  const tray = b.tray('plum-copper', 2, 'autumn');
  b.pass(tray, 'turn');
  a.later(5);
  a.act({
    kind: 'change-route',
    route: route.haft,
    name: 'Haft',
    stages: [stage.bore],
    destinations: new Map(),
  });
  a.act({
    kind: 'change-route',
    route: route.short,
    name: 'Short',
    stages: [stage.turn],
    destinations: new Map(),
  });
  a.receive(b.log);
  expect(whyStageStays(a.shop, stage.sand)).toEqual({ kind: 'holds', pieces: 1 });
});

test('stages are listed as the routes have them, those off every route last', () => {
  const { registers } = aWorkshop().shop;
  expect(inRouteOrder(registers, factsOf(registers, 'stage')).map(({ id }) => id)).toEqual([
    ...[stage.bore, stage.glue, stage.turn, stage.sand, stage.grade, stage.photo, stage.wax],
  ]);
});
