import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Grade } from '../../../src/domain/log/place.ts';
import { blemishesOf, shelfRow } from '../../../src/domain/rollup/shelf-stock.ts';
import { stagesOfTray } from '../../../src/domain/rollup/waiting.ts';
import { countOf } from '../../../src/domain/shop/counter.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { isVoided } from '../../../src/domain/shop/voids.ts';
import { aWorkshop, lowered, meet, type TestShop, tablets } from '../../support/a-shop.ts';
import { finish } from '../../support/full-shelf.ts';
import { histories, play, type Step } from '../../support/histories.ts';
import { standingsOf } from '../../support/standings.ts';
import { reason, stage, variant } from '../../support/workshop.ts';

const ash = variant['ash-copper'];
const at = ({ shop }: TestShop, grade: Grade) => shelfRow(shop, { variant: ash, grade }).at;

/** Five pieces that wait to be sanded, two of them lowered at turning for a scratch. */
function twoSeconds() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 5);
  shop.pass(tray, 'bore', { pieces: 5 });
  shop.load(tray, 'glue', { pieces: 5 });
  shop.later(24 * 60);
  shop.pass(tray, 'glue', { pieces: 5, held: true });
  shop.pass(tray, 'turn', { pieces: 3 });
  shop.flaw(tray, 'turn', { why: 'scratch', outcome: lowered, pieces: 2 });
  return { shop, tray };
}
const spotAt = (tray: ReturnType<TestShop['tray']>, shown = 0) =>
  ({ tray, stage: stage.sand, at: 'waiting', shown }) as const;

describe('a second that was reworked', () => {
  test('is a first again at its stage, and its blemish is gone from the listing', () => {
    const { shop, tray } = twoSeconds();
    shop.act({ kind: 'raise', spot: spotAt(tray), pieces: 1, gone: [reason.scratch] });
    expect(stagesOfTray(shop.shop, tray)).toMatchObject([{ waiting: { first: 4, second: 1 } }]);
    expect(blemishesOf(shop.shop, ash)).toEqual([{ reason: reason.scratch, pieces: 1 }]);
  });

  test('has been there as long as before, and was judged no second time', () => {
    const { shop, tray } = twoSeconds();
    const [before] = stagesOfTray(shop.shop, tray);
    const judged = structuredClone(shop.shop.visits);
    shop.later(600);
    shop.act({ kind: 'raise', spot: spotAt(tray), pieces: 2, gone: [] });
    expect(stagesOfTray(shop.shop, tray)[0]?.since).toBe(before?.since);
    expect(shop.shop.visits).toEqual(judged);
  });

  test('is a second with its blemish once more when that is taken back', () => {
    const { shop, tray } = twoSeconds();
    const raised = shop.act({ kind: 'raise', spot: spotAt(tray), pieces: 2, gone: [reason.scratch] });
    shop.undo(raised);
    expect(stagesOfTray(shop.shop, tray)).toMatchObject([{ waiting: { first: 3, second: 2 } }]);
    expect(blemishesOf(shop.shop, ash)).toEqual([{ reason: reason.scratch, pieces: 2 }]);
  });

  test('goes on curing while it is one', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered });
    shop.load(tray, 'glue', { grade: 'second' });
    const held = shop.shop.positions.working.get(tray);
    const [cure] = [...(held?.values() ?? [])].map(({ place }) => place);
    shop.act({
      kind: 'raise',
      spot: { ...spotAt(tray), stage: stage.glue, at: 'held' },
      pieces: 1,
      gone: [],
    });
    const [after] = [...(shop.shop.positions.working.get(tray)?.values() ?? [])].map(({ place }) => place);
    expect(after).toEqual({ ...cure, grade: 'first' });
  });

  test('in the hand is not refused because another tablet was quicker: the count asks for a recount', () => {
    const { shop, tray } = twoSeconds();
    shop.act({ kind: 'raise', spot: spotAt(tray), pieces: 2, gone: [] });
    expect(shop.refusal({ kind: 'raise', spot: spotAt(tray), pieces: 1, gone: [] })).toEqual({
      kind: 'no-seconds',
    });
    shop.act({ kind: 'raise', spot: spotAt(tray, 1), pieces: 1, gone: [] });
    expect(stagesOfTray(shop.shop, tray)).toMatchObject([{ waiting: { first: 6, second: -1 } }]);
  });

  test('is raised no more often than there are any', () => {
    const { shop, tray } = twoSeconds();
    const refusal = (pieces: number) => shop.refusal({ kind: 'raise', spot: spotAt(tray), pieces, gone: [] });
    expect(refusal(3)).toEqual({ kind: 'too-many', there: 2 });
    expect(refusal(0)).toEqual({ kind: 'number', problem: { kind: 'too-small', least: 1 } });
    expect(refusal(1.5)).toEqual({ kind: 'number', problem: { kind: 'not-whole' } });
  });
});

/** Two trays of which seconds are on the shelf: two of the older one, three of the other. */
function secondsOnShelf() {
  const shop = aWorkshop();
  const trays = [2, 3].map((pieces) => {
    const tray = shop.tray('ash-copper', pieces);
    shop.flaw(tray, 'bore', { why: 'gap', outcome: lowered, pieces });
    finish(shop, tray, { pieces, grade: 'second', from: 'glue' });
    return tray;
  });
  return { shop, trays };
}
const raise = (pieces: number, tray: ReturnType<TestShop['tray']> | null = null) =>
  ({ kind: 'raise-finished', variant: ash, tray, pieces, gone: [reason.gap] }) as const;

describe('finished seconds', () => {
  test('are firsts on the shelf, those of the oldest tray first', () => {
    const { shop, trays } = secondsOnShelf();
    const events = shop.act(raise(3));
    expect(events.map((event) => event.kind === 'raised' && [event.of.tray, event.pieces])).toEqual([
      [trays[0], 2],
      [trays[1], 1],
    ]);
    expect([at(shop, 'first').shelf, at(shop, 'second').shelf]).toEqual([3, 2]);
    expect(blemishesOf(shop.shop, ash)).toEqual([{ reason: reason.gap, pieces: 2 }]);
    shop.undo(events);
    expect([at(shop, 'first').shelf, at(shop, 'second').shelf]).toEqual([0, 5]);
  });

  test('of one tray alone where it is named', () => {
    const { shop, trays } = secondsOnShelf();
    shop.act(raise(3, trays[1] ?? null));
    expect(shop.refusal(raise(1, trays[1] ?? null))).toEqual({ kind: 'no-seconds' });
    expect(shop.refusal(raise(3, trays[0] ?? null))).toEqual({ kind: 'too-many', there: 2 });
  });

  test('that are listed come off the list first', () => {
    const { shop } = secondsOnShelf();
    const line = { variant: ash, grade: 'second', from: 'shelf', pieces: 4, shown: 5, price: null } as const;
    shop.act({ kind: 'move-on-shelf', to: 'listed', lines: [line] });
    expect(shop.refusal(raise(2))).toEqual({ kind: 'too-many', there: 1 });
    shop.act(raise(1));
    expect(shop.refusal(raise(1))).toEqual({ kind: 'no-seconds' });
    expect(at(shop, 'second')).toMatchObject({ shelf: 0, listed: 4 });
  });
});

test('two tablets that raise the same second leave a count to be checked, and no piece more', () => {
  const [one, two] = tablets('A', 'C');
  if (!one || !two) throw new Error('two tablets');
  const tray = one.tray('ash-copper', 1);
  one.flaw(tray, 'bore', { why: 'gap', outcome: lowered });
  meet(one, two);
  const spot = { tray, stage: stage.glue, at: 'waiting', shown: 1 } as const;
  for (const tablet of [one, two]) tablet.act({ kind: 'raise', spot, pieces: 1, gone: [] });
  meet(one, two);
  expect(one.shop).toEqual(two.shop);
  expect(stagesOfTray(one.shop, tray)).toMatchObject([{ waiting: { first: 2, second: -1 } }]);
});

/** Four of the nine pieces that each history begins with are lowered first, and one raised again; then most go the whole way. */
const lowers: Step = { act: 'flaw', tablet: 0, a: 0, b: 3, c: 1 };
const finishes = Array.from(
  { length: 30 },
  (_, at): Step => ({ act: 'pass', tablet: 0, a: at % 3, b: 3, c: 1 }),
);
const raises: Step = { act: 'raise', tablet: 0, a: 0, b: 0, c: 1 };
const workings = histories.map((steps) => [lowers, { ...raises, c: 2 }, ...finishes, raises, ...steps]);

test('raising moves pieces from seconds to firsts and changes no sum of both, whatever is undone and whoever meets', () => {
  const raised = { inWork: 0, finished: 0 };
  fc.assert(
    fc.property(workings, (steps) => {
      const { log } = play(steps);
      const shop = shopOf(log);
      // The same log without what was raised: a count of pieces by tray and stage that knows no grade.
      const without = shopOf(
        log.filter(
          (event) => event.kind !== 'raised' && !(event.kind === 'voided' && isOfRaise(event.event)),
        ),
      );
      const inForce = log.filter((event) => event.kind === 'raised' && !isVoided(shop.voids, event));
      for (const event of inForce) {
        const isFinished = event.kind === 'raised' && event.moves.some(({ to }) => to?.at === 'finished');
        raised[isFinished ? 'finished' : 'inWork'] += 1;
      }
      expect(regardlessOfGrade(shop, log)).toEqual(regardlessOfGrade(without, log));
      const net = inForce.reduce((sum, event) => sum + (event.kind === 'raised' ? event.pieces : 0), 0);
      expect(seconds(without, log) - seconds(shop, log)).toBe(net);
      expect([...shop.ledger.made]).toEqual([...without.ledger.made]);
      for (const id of Object.values(variant)) {
        const gone = inForce.filter((event) => event.kind === 'raised' && event.of.variant === id);
        for (const why of [reason.catch, reason.gap]) {
          const taken = gone.reduce(
            (sum, event) => sum + (event.kind === 'raised' && event.reasons.includes(why) ? event.pieces : 0),
            0,
          );
          const key = `${id}|${why}` as const;
          expect(countOf(shop.shelf.blemishes, key)).toBe(countOf(without.shelf.blemishes, key) - taken);
        }
      }
    }),
    { numRuns: 300 },
  );
  expect(raised.inWork).toBeGreaterThan(50);
  expect(raised.finished).toBeGreaterThan(50);
});

type Log = ReturnType<typeof play>['log'];

function isOfRaise(event: Log[number]): boolean {
  return event.kind === 'raised' || (event.kind === 'voided' && isOfRaise(event.event));
}

function regardlessOfGrade(shop: ReturnType<typeof shopOf>, log: Log): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { of, place, pieces } of standingsOf(shop, log)) {
    const { grade, ...where } = { grade: null, ...place };
    const key = `${of.tray} ${JSON.stringify(Object.entries(where).toSorted())}`;
    counts.set(key, (counts.get(key) ?? 0) + pieces);
  }
  return new Map([...counts].filter(([, pieces]) => pieces !== 0).toSorted());
}

function seconds(shop: ReturnType<typeof shopOf>, log: Log): number {
  return standingsOf(shop, log).reduce(
    (sum, { place, pieces }) => sum + ('grade' in place && place.grade === 'second' ? pieces : 0),
    0,
  );
}
