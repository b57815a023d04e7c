import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/learning.json' with { type: 'json' };
import { type Random, seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import type { ShopDay, StationId, TrayId } from '../../../src/domain/log/ids.ts';
import { normalQuantile } from '../../../src/domain/statistics/special-functions.ts';
import { learnersIn } from '../../../src/domain/study/learners.ts';
import { stageLearning } from '../../../src/domain/study/stage-learning.ts';
import type { TapKind } from '../../../src/domain/study/tap-kind.ts';
import { emptyColumns, type TapTable } from '../../../src/domain/study/tap-table.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { batch, person, species, stage, variant } from '../../support/workshop.ts';

const minutes = (each: number) => Math.round(each * 60_000);
const unknown = () => undefined;

/** A table of taps of one piece by one person at one stage, each with its minutes, or with an unknown time. */
function tableOf(times: readonly (number | undefined)[]): TapTable {
  const columns = emptyColumns(times.length);
  for (const [row, time] of times.entries()) columns.elapsed[row] = time === undefined ? -1 : minutes(time);
  const visit: TapKind = {
    ...{ kind: 'visit', stage: stage.turn, pieces: 1, again: 0, flaw: null, trials: [], doubtful: false },
  };
  const tray = { tray: 't' as TrayId, code: 'A1K', species: species.ash, variant: variant['ash-copper'] };
  return {
    length: times.length,
    kinds: [visit],
    trays: [{ ...tray, batch: batch.spring }],
    days: ['2026-03-02' as ShopDay],
    persons: [person.edda],
    stations: ['bench' as StationId],
    columns,
  };
}

const learningOf = (times: readonly (number | undefined)[], usual: number | undefined = undefined) =>
  stageLearning(tableOf(times), { pieceMinutes: () => usual })[0];

/** Minutes of n pieces by hands that learn, with a spread of 30 % and now and then a pause that nobody told of. */
function hand(
  random: Random,
  { pieces, exponent, pauses = 0 }: { pieces: number; exponent: number; pauses?: number },
): readonly number[] {
  return Array.from({ length: pieces }, (_, at) => {
    const noise = Math.exp(0.3 * normalQuantile((random() * 2 ** 32 + 0.5) / 2 ** 32));
    return 7 * (at + 1) ** exponent * noise + (random() < pauses ? 30 * random() : 0);
  });
}

describe('the learning of a hand', () => {
  test('is told by stage and person, with the pieces of all woods in the order of their work', () => {
    const shop = aWorkshop();
    const trays = (['ash-copper', 'plum-copper'] as const).map((name) => shop.tray(name, 40));
    for (let at = 0; at < 24; at += 1) {
      shop.by(at % 2 === 0 ? 'edda' : null);
      shop.pace(minutes(8 * (Math.floor(at / 2) + 1) ** -0.3));
      shop.pass(trays[at % 4 < 2 ? 0 : 1] ?? ('' as TrayId), 'bore');
    }
    const learning = stageLearning(studied(shop.log), { pieceMinutes: unknown });
    expect(learning.map(({ stage: at, person: who, made, timed }) => [at, who, made, timed])).toEqual([
      ['bore', null, 12, 12],
      ['bore', 'edda', 12, 12],
    ]);
    for (const { curve } of learning) {
      expect(curve.exponent).toBeCloseTo(-0.3, 3);
      expect(curve.firstUnit).toBeCloseTo(8, 2);
    }
  });

  test('is the published 80 % curve for its factors (Heizer and Render, module E; Stevenson, table 7S.1)', () => {
    const { inputs, expected } = cases['learn-table-80'];
    const times = new Array<number | undefined>(100).fill(undefined);
    for (const [at, n] of inputs.n.entries()) times[n - 1] = 10 * (expected.unit[at] ?? 0);
    const learning = learningOf(times);
    expect(learning?.curve.rate).toBeCloseTo(inputs.rate, 3);
    expect(learning?.curve.firstUnit).toBeCloseTo(10, 1);
    expect([learning?.made, learning?.timed]).toEqual([100, 11]);
  });

  test('is not told of fewer than ten known times', () => {
    const times = Array.from({ length: 10 }, (_, at) => 8 - at / 2);
    expect(learningOf(times)).toBeDefined();
    expect(learningOf(times.map((time, at) => (at === 4 ? undefined : time)))).toBeUndefined();
  });
});

describe('a time is not known, and its pieces count as made,', () => {
  function taken(act: (shop: ReturnType<typeof aWorkshop>, tray: TrayId) => void) {
    const shop = aWorkshop();
    act(shop, shop.tray('ash-copper', 90));
    return learnersIn(studied(shop.log), () => 5)[0];
  }

  test.each<[string, number | null]>([
    ['when nobody knows since when', null],
    ['after a break', minutes(15) + 1],
    ['when it was tapped at once', minutes(0.5)],
  ])('%s', (_, pace) => {
    const learner = taken((shop, tray) => {
      shop.pace(pace);
      shop.pass(tray, 'bore');
      shop.pace(minutes(15));
      shop.pass(tray, 'bore');
    });
    expect(learner).toMatchObject({ made: 2, timed: 1, kept: [{ number: 2, minutes: 15, pieces: 1 }] });
  });

  test('at the beginning of a spell, with what is tapped at once after it', () => {
    const learner = taken((shop, tray) => {
      shop.pace(minutes(4));
      shop.act({ kind: 'begin-spell', stage: stage.bore });
      shop.pass(tray, 'bore');
      shop.pace(minutes(0.1));
      shop.pass(tray, 'bore');
      shop.pace(minutes(3));
      shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
    });
    expect(learner).toMatchObject({ made: 3, timed: 1, kept: [{ number: 3, minutes: 3 }] });
  });
});

test('pieces of one tap, and of taps at once after it, share its minutes and are one observation', () => {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 90);
  shop.pace(minutes(6));
  shop.pass(tray, 'bore', { pieces: 2 });
  shop.pass(tray, 'bore', { pieces: 3 });
  shop.pace(minutes(0.2));
  shop.pass(tray, 'bore');
  const [learner] = learnersIn(studied(shop.log), () => 3);
  expect(learner).toMatchObject({ made: 6, timed: 6 });
  expect(learner?.kept).toEqual([
    { number: expect.closeTo(Math.sqrt(2), 9), minutes: 3, pieces: 2 },
    { number: expect.closeTo((3 * 4 * 5 * 6) ** 0.25, 9), minutes: expect.closeTo(6.2 / 4, 9), pieces: 4 },
  ]);
});

test('a quick tap of nobody in particular at one tablet adds nothing to the stretch of another', () => {
  const [here, there] = ['here', 'there'].map((station) => aWorkshop({ station }));
  if (!here || !there) throw new Error('two tablets');
  const tray = here.tray('ash-copper', 9);
  here.pace(minutes(6));
  here.pass(tray, 'bore');
  there.receive(here.log);
  there.later(60);
  there.pace(minutes(0.1));
  there.pass(tray, 'bore');
  const [learner] = learnersIn(studied([...here.log, ...there.log.slice(-1)]), () => 6);
  expect(learner).toMatchObject({ made: 2, timed: 1, kept: [{ number: 1, minutes: 6 }] });
});

describe('the curve of simulated hands', () => {
  test('lies on their exponent when nothing scatters, however many pieces have no time', () => {
    const exponents = fc.double({ min: -0.6, max: 0.1, noNaN: true });
    const gaps = fc.array(fc.boolean(), { minLength: 20, maxLength: 300 });
    fc.assert(
      fc.property(exponents, gaps, (exponent, known) => {
        fc.pre(known.filter(Boolean).length >= 10);
        const times = known.map((is, at) => (is ? 7 * (at + 1) ** exponent : undefined));
        const learning = learningOf(times);
        expect(learning?.curve.exponent).toBeCloseTo(exponent, 3);
        expect(learning?.timed).toBe(known.filter(Boolean).length);
        const { points = [] } = learning ?? {};
        expect(points.length).toBeLessThanOrEqual(24);
        expect(points.map(({ number }) => number)).toEqual(
          points.map(({ number }) => number).toSorted((a, b) => a - b),
        );
      }),
    );
  });

  test('holds their rate in nine of ten intervals, with 3 % of pauses that nobody told of', () => {
    const random = seededRandom(1936);
    let held = 0;
    for (let run = 0; run < 200; run += 1) {
      const learning = learningOf(hand(random, { pieces: 200, exponent: -0.3, pauses: 0.03 }));
      const [low, high] = learning?.curve.rateInterval ?? [2, 0];
      if (low <= 2 ** -0.3 && 2 ** -0.3 <= high) held += 1;
    }
    // Two standard errors of 200 runs are 0.04; pauses shift the fit a little.
    expect(held / 200).toBeGreaterThan(0.83);
  });

  test('is near enough to tell 81 % from 83 % after five thousand pieces, of which not all are kept', () => {
    const times = hand(seededRandom(7), { pieces: 5000, exponent: -0.3, pauses: 0.03 });
    const learning = learningOf(times);
    expect(learning?.curve.exponent).toBeCloseTo(-0.3, 1);
    const [low = 0, high = 1] = learning?.curve.rateInterval ?? [];
    expect(low).toBeLessThan(2 ** -0.3);
    expect(high).toBeGreaterThan(2 ** -0.3);
    expect(high - low).toBeLessThan(0.02);
    expect([learning?.made, learning?.timed]).toEqual([5000, times.filter((time) => time <= 15).length]);
  });
});

describe('of a long history', () => {
  test('what is kept has the number that it had: all of the first 127, then 64 of each doubling', () => {
    const times = Array.from({ length: 200_000 }, (_, at) => 1 + at / 200_000);
    const [learner] = learnersIn(tableOf(times), unknown);
    const { kept = [] } = learner ?? {};
    for (const { number, minutes: each } of kept) expect(each).toBeCloseTo(times[number - 1] ?? 0, 4);
    expect(kept.slice(0, 127).map(({ number }) => number)).toEqual(
      Array.from({ length: 127 }, (_, at) => at + 1),
    );
    const within = (from: number) => kept.filter(({ number }) => number >= from && number < 2 * from).length;
    expect([128, 1024, 65_536].map(within)).toEqual([64, 64, 64]);
    expect(learner?.timed).toBe(200_000);
  });

  test('a chart has 24 points at most, each the median of its pieces', () => {
    const times = Array.from({ length: 3000 }, (_, at) => (at % 10 === 9 ? 14 : 4));
    const { points = [] } = learningOf(times) ?? {};
    expect(points.length).toBeLessThanOrEqual(24);
    expect(points.length).toBeGreaterThan(15);
    expect(new Set(points.filter(({ pieces }) => pieces > 8).map(({ minutes: each }) => each))).toEqual(
      new Set([4]),
    );
    expect(points[0]).toEqual({ number: 1, minutes: 4, pieces: 1 });
    expect(points.at(-1)?.number).toBeGreaterThan(2000);
  });
});
