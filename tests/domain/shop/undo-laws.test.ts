import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Draft, ShopEvent } from '../../../src/domain/log/event.ts';
import { eventKey } from '../../../src/domain/log/version-vector.ts';
import { addEvent, emptyShop, shopOf } from '../../../src/domain/shop/shop.ts';
import type { Voidable } from '../../../src/domain/shop/voids.ts';
import { isVoidable } from '../../support/a-shop.ts';
import { histories, historiesWithout, play } from '../../support/histories.ts';
import { expectSameShop, expectSameSums } from '../../support/same-shop.ts';

const runs = { numRuns: 300 };
const withoutUndo = historiesWithout('undo', 'undo-everywhere');

/** A void of `event` by another station. */
function voidOf(
  event: Voidable,
  { station, seq = 1 }: { station: string; seq?: number },
): ShopEvent & Voidable {
  const { zone, day, person, stamp } = event;
  const draft: Draft = { kind: 'voided', zone, day, person, event };
  return { ...draft, station, seq, stamp } as ShopEvent & Voidable;
}

/**
 * The slow way to say what counts: an event is in force unless some void that is in force names it. What is not in
 * force, and the voids themselves, are left out of the log.
 */
function inForceOnly(log: readonly ShopEvent[]): readonly ShopEvent[] {
  const voids = log.filter((event) => event.kind === 'voided');
  const counts = (event: ShopEvent): boolean =>
    !voids.some((each) => eventKey(each.event) === eventKey(event) && counts(each));
  return log.filter((event) => event.kind !== 'voided' && counts(event));
}

test('an undo that is taken back leaves nothing in the voids under the station of its event', () => {
  const event = play([]).log.find(isVoidable);
  if (!event) throw new Error('a new shop has nothing to undo');
  const undo = voidOf(event, { station: 'tablet-x' });
  const { voids } = shopOf([event, undo, voidOf(undo, { station: 'tablet-y' })]);
  expect([...voids.keys()]).toEqual(['tablet-x']);
});

describe('the undo of any event', () => {
  test('leaves the sums of the log without that event', () => {
    fc.assert(
      fc.property(withoutUndo, fc.nat(), (steps, which) => {
        const { log } = play(steps);
        const tally = log.filter(isVoidable);
        const event = tally[which % tally.length];
        if (!event) throw new Error('every history has a tray');
        const undone = shopOf([...log, voidOf(event, { station: 'z' })]);
        expectSameSums(undone, shopOf(log.filter((each) => each !== event)));
      }),
      runs,
    );
  });

  test('before the event comes, leaves the sums without it when it does come', () => {
    fc.assert(
      fc.property(withoutUndo, fc.nat(), (steps, which) => {
        const { log } = play(steps);
        const tally = log.filter(isVoidable);
        const event = tally[which % tally.length];
        if (!event) throw new Error('every history has a tray');
        const undo = voidOf(event, { station: 'z' });
        const shop = shopOf([undo, ...log.filter((each) => each !== event)]);
        const before = structuredClone(shop);
        addEvent(shop, event);
        expectSameSums(shop, before);
        expectSameShop(shop, shopOf([...log, undo]));
      }),
      runs,
    );
  });

  test('taken back itself, restores every sum', () => {
    fc.assert(
      fc.property(withoutUndo, fc.nat(), fc.gen(), (steps, which, draw) => {
        const { log } = play(steps);
        const tally = log.filter(isVoidable);
        const event = tally[which % tally.length];
        if (!event) throw new Error('every history has a tray');
        const undo = voidOf(event, { station: 'z' });
        const redo = voidOf(undo, { station: 'z', seq: 2 });
        const whole = [...log, undo, redo];
        const order = draw(() =>
          fc.shuffledSubarray(whole, { minLength: whole.length, maxLength: whole.length }),
        );
        expectSameSums(shopOf(order), shopOf(log));
      }),
      runs,
    );
  });

  test('by two tablets subtracts once, and counts as long as one of the two stands', () => {
    fc.assert(
      fc.property(withoutUndo, fc.nat(), (steps, which) => {
        const { log } = play(steps);
        const tally = log.filter(isVoidable);
        const event = tally[which % tally.length];
        if (!event) throw new Error('every history has a tray');
        const [one, two] = [voidOf(event, { station: 'y' }), voidOf(event, { station: 'z' })];
        const without = shopOf(log.filter((each) => each !== event));
        expectSameSums(shopOf([...log, one, two]), without);
        const redo = voidOf(one, { station: 'y', seq: 2 });
        expectSameSums(shopOf([...log, one, two, redo]), without);
        expectSameSums(shopOf([...log, one, redo, two, voidOf(two, { station: 'z', seq: 2 })]), shopOf(log));
      }),
      runs,
    );
  });
});

test('with any undos of undos, the sums are those of the events that are in force, added up the slow way', () => {
  fc.assert(
    fc.property(histories, (steps) => {
      const { log } = play(steps);
      expectSameSums(shopOf(log), shopOf(inForceOnly(log)));
    }),
    { numRuns: 500 },
  );
});

test('when everything is taken back, nothing is left but set-up and spells', () => {
  fc.assert(
    fc.property(historiesWithout('undo', 'undo-everywhere', 'spell'), (steps) => {
      const { log } = play(steps);
      const voids = log
        .filter(isVoidable)
        .map((event, index) => voidOf(event, { station: 'z', seq: index + 1 }));
      expectSameSums(shopOf([...log, ...voids]), emptyShop());
      expect(shopOf(log).trays.size).toBeGreaterThan(0);
    }),
    runs,
  );
});
