import { describe, expect, test } from 'vitest';
import { type PlanAsked, planOf } from '../../../src/domain/plan/plan-study.ts';
import { mostWanted } from '../../../src/domain/plan/starts/most-wanted.ts';
import { lookedUpTo } from '../../../src/domain/plan/starts/start-study.ts';
import type { LogToStudy } from '../../../src/domain/study/log-of-taps.ts';
import { tapTable } from '../../../src/domain/study/log-of-taps.ts';
import { studyDesk } from '../../../src/domain/study/study-desk.ts';
import { routesIn } from '../../../src/domain/study/study-routes.ts';
import { aWorkshop, lowered, scrapped } from '../../support/a-shop.ts';
import { batch, species, stage } from '../../support/workshop.ts';

/** Ash at the boring: 20 were judged, 2 of them blown and 3 lowered. A minute each. */
function bored() {
  const shop = aWorkshop();
  shop.act({ kind: 'begin-spell', stage: stage.bore });
  const tray = shop.tray('ash-copper', 30);
  shop.pace(60_000);
  for (let piece = 0; piece < 15; piece += 1) shop.pass(tray, 'bore');
  for (let piece = 0; piece < 2; piece += 1) shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  for (let piece = 0; piece < 3; piece += 1) shop.flaw(tray, 'bore', { why: 'scratch', outcome: lowered });
  return shop;
}

const asked = (part: Partial<PlanAsked> = {}): PlanAsked => ({
  ...{ key: 'a', batch: batch.spring, species: species.ash, goal: 'firsts', wanted: 10, finished: 0 },
  route: [stage.bore],
  standing: [],
  confidence: 0.9,
  whole: null,
  ...part,
});

const answersOf = (shop: ReturnType<typeof aWorkshop>, ...starts: PlanAsked[]) =>
  planOf(tapTable({ runs: [], events: shop.log }), {
    routes: routesIn(shop.shop.registers),
    starts,
    holds: [stage.glue],
  });

describe('what a log says of starts', () => {
  test('rests on what the wood has been through, by what is counted as good', () => {
    const { starts, judged } = answersOf(bored(), asked(), asked({ key: 'b', goal: 'finished' }));
    expect(judged).toBe(20);
    expect(starts.map(({ key, beliefs: [first] }) => [key, first?.tried, first?.through])).toEqual([
      ['a', 20, 15],
      ['b', 20, 18],
    ]);
    const [strict, mild] = starts.map(({ smallest }) => (smallest.kind === 'starts' ? smallest.point : null));
    expect(strict?.chance).toBeGreaterThanOrEqual(0.9);
    expect(mild?.starts).toBeLessThan(strict?.starts ?? 0);
  });

  test('counts what is in flight, and asks for none where that is enough', () => {
    const standing = [{ stage: stage.bore, pieces: 40 }];
    const [answer] = answersOf(bored(), asked({ standing })).starts;
    expect(answer?.smallest).toMatchObject({ kind: 'starts', point: { starts: 0 } });
    expect(answer?.none.chance).toBeGreaterThan(0.9);
  });

  test('has an answer without any history, and says that it rests on nothing', () => {
    const { starts, judged } = answersOf(aWorkshop(), asked({ wanted: 1 }));
    expect(judged).toBe(0);
    expect(starts[0]?.beliefs).toMatchObject([{ from: 'prior', tried: 0, through: 0 }]);
    expect(starts[0]?.smallest.kind).toBe('starts');
  });

  test('of another wood leans on the woods that were tried', () => {
    expect(answersOf(bored(), asked({ species: species.olive })).starts[0]?.beliefs).toMatchObject([
      { from: 'other-woods', tried: 0 },
    ]);
  });

  test('draws the curve and finds the cheapest start where that is asked, and only there', () => {
    const costs = { perStart: 100, perShort: 1000, perOver: 0 };
    const [plain, drawn] = answersOf(bored(), asked(), asked({ whole: { costs } })).starts;
    expect(plain?.whole).toBeNull();
    expect(drawn?.whole?.cheapest?.kind).toBe('starts');
    const chances = drawn?.whole?.curve.map(({ chance }) => Math.round(1e9 * chance) / 1e9) ?? [];
    expect(chances[0]).toBe(0);
    expect(chances.at(-1)).toBeGreaterThan(0.9);
    expect(chances).toEqual(chances.toSorted((a, b) => a - b));
  });

  test('says how far it looked where a chance is out of reach, for targets of any size', () => {
    expect([1, 100, 10_000, mostWanted].map(lookedUpTo)).toEqual([105, 600, 30_000, 40_000]);
    expect(() => answersOf(aWorkshop(), asked({ wanted: mostWanted + 1 }))).toThrow(RangeError);
    const [answer] = answersOf(aWorkshop(), asked({ wanted: 200, confidence: 0.99 })).starts;
    expect(answer?.smallest).toMatchObject({ kind: 'out-of-reach', point: { starts: 1100 } });
  });
});

describe('hours that work ahead needs', () => {
  test('are those of what is in flight and of the further starts, at a minute a piece', () => {
    const standing = [{ stage: stage.bore, pieces: 40 }];
    const { hours } = answersOf(bored(), asked({ standing }));
    expect(hours).toMatchObject([{ batch: batch.spring, unknown: [] }]);
    expect(hours[0]?.minutes).toBeCloseTo(40, 0);
  });

  test('say at which stages a piece has no time yet', () => {
    // What cures needs no hands as long as nobody has timed its loading.
    const route = [stage.bore, stage.glue, stage.turn];
    const { hours } = answersOf(bored(), asked({ route }));
    expect(hours).toMatchObject([{ unknown: [stage.turn] }]);
  });
});

test('a desk answers plans and studies from one reading of the log', async () => {
  const shop = bored();
  const desk = studyDesk();
  let reads = 0;
  const read = async (): Promise<LogToStudy> => {
    reads += 1;
    return { runs: [], events: shop.log };
  };
  const routes = routesIn(shop.shop.registers);
  const questions = { routes, starts: [asked()], holds: [] };
  const { study } = await desk({ subject: 'plan', questions, size: 1 }, read);
  expect(study.starts).toHaveLength(1);
  const all = { routes, filter: {}, comparison: null, answered: [], charted: null };
  const { study: whole } = await desk({ subject: 'study', questions: all, size: 1 }, read);
  expect([whole.reach.judged, reads]).toEqual([20, 1]);
});
