import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { eventKinds, type ShopEvent } from '../../../src/domain/log/event.ts';
import { addEvent, emptyShop, shopOf } from '../../../src/domain/shop/shop.ts';
import { allPlaces } from '../../support/all-places.ts';
import { histories, play } from '../../support/histories.ts';
import { expectSameShop } from '../../support/same-shop.ts';

const runs = { numRuns: 300 };

/** The same events in an order that a test draws. */
const anyOrder = (log: readonly ShopEvent[]) =>
  fc.shuffledSubarray([...log], { minLength: log.length, maxLength: log.length });

describe('the shop is the sum of its log', () => {
  test('in whatever order the events come', () => {
    fc.assert(
      fc.property(histories, fc.gen(), (steps, draw) => {
        const { log } = play(steps);
        expectSameShop(shopOf(draw(anyOrder, log)), shopOf(log));
      }),
      runs,
    );
  });

  test('however often an event comes again', () => {
    fc.assert(
      fc.property(histories, fc.gen(), (steps, draw) => {
        const { log } = play(steps);
        const again = draw((events: readonly ShopEvent[]) => fc.array(fc.constantFrom(...events)), log);
        const mixed = draw(anyOrder, [...log, ...again]);
        const shop = emptyShop();
        const added = mixed.filter((event) => addEvent(shop, event));
        expect(added).toHaveLength(log.length);
        expectSameShop(shop, shopOf(log));
      }),
      runs,
    );
  });

  test('through whichever stations it comes, part by part', () => {
    fc.assert(
      fc.property(histories, fc.gen(), (steps, draw) => {
        const { log } = play(steps);
        const parts: ShopEvent[][] = [[], [], []];
        for (const event of log) parts[draw(fc.nat, 2)]?.push(event);
        const middle = shopOf([...(parts[2] ?? []), ...(parts[0] ?? [])]);
        for (const event of [...(parts[1] ?? []), ...(parts[0] ?? [])]) addEvent(middle, event);
        expectSameShop(middle, shopOf(log));
      }),
      runs,
    );
  });

  test('on each of the tablets, once all have met', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { tablets, log } = play(steps);
        for (const tablet of tablets) {
          tablet.receive(log);
          expectSameShop(tablet.shop, shopOf(log));
        }
      }),
      runs,
    );
  });

  test('at every moment, though it is kept up to date and not added up anew', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { tablets } = play(steps);
        for (const tablet of tablets) expectSameShop(tablet.shop, shopOf(tablet.log));
      }),
      runs,
    );
  });

  test('also when it is kept as a snapshot in between', () => {
    fc.assert(
      fc.property(histories, fc.gen(), (steps, draw) => {
        const { log } = play(steps);
        const cut = draw(fc.nat, log.length);
        const snapshot = structuredClone(shopOf(log.slice(0, cut)));
        for (const event of log.slice(cut)) addEvent(snapshot, event);
        expectSameShop(snapshot, shopOf(log));
      }),
      runs,
    );
  });
});

test('the histories hold what makes the laws hard: voids of voids, double voids, counts below zero, re-routes', () => {
  const found = { 'void of a void': 0, 'double void': 0, 'below zero': 0 };
  const kinds = new Map<string, number>();
  for (const steps of fc.sample(histories, 300)) {
    const { log } = play(steps);
    const targets = log.flatMap((event) => (event.kind === 'voided' ? [event] : []));
    if (targets.some(({ event }) => event.kind === 'voided')) found['void of a void'] += 1;
    const keys = targets.map(({ event }) => `${event.station}:${event.seq}`);
    if (new Set(keys).size < keys.length) found['double void'] += 1;
    const standing = [...allPlaces(shopOf(log)).values()].flatMap((places) => [...places.values()]);
    if (standing.some(({ pieces }) => pieces < 0)) found['below zero'] += 1;
    for (const kind of new Set(log.map((event) => event.kind))) kinds.set(kind, (kinds.get(kind) ?? 0) + 1);
  }
  for (const count of Object.values(found)) expect(count).toBeGreaterThan(5);
  expect([...kinds.keys()].toSorted()).toEqual(eventKinds.toSorted());
  for (const count of kinds.values()) expect(count).toBeGreaterThan(5);
});
