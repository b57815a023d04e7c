import { describe, expect, test } from 'vitest';
import { type Random, seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { changeScan } from '../../../src/domain/signals/change-scan.ts';
import { signalsOf } from '../../../src/domain/signals/signals-of.ts';
import { newestRun, type Tally } from '../../../src/domain/signals/tally.ts';
import { taroneHolm } from '../../../src/domain/statistics/false-discovery.ts';

const rates = [0.005, 0.01, 0.02, 0.05, 0.1];

function flawedOf(size: number, { rate, random }: { rate: number; random: Random }): number {
  let flawed = 0;
  for (let piece = 0; piece < size; piece += 1) flawed += random() < rate ? 1 : 0;
  return flawed;
}

function traysAt(rate: number, { trays, random }: { trays: number; random: Random }): Tally {
  const sizes = Array.from({ length: trays }, () => 8 + Math.floor(random() * 9));
  return { sizes, counts: sizes.map((size) => flawedOf(size, { rate, random })) };
}

/** A shop of so many series, each of a rate of its own that never changes. */
function quietShop(series: number, { trays, random }: { trays: number; random: Random }): Tally[] {
  return Array.from({ length: series }, (_, at) => traysAt(rates[at % rates.length] ?? 0, { trays, random }));
}

/** What the list would say of pieces alone, without a look at their trays. */
function hasAlarmByPieces(series: readonly Tally[]): boolean {
  const scans = series.flatMap((tally) => changeScan(newestRun(tally, 3000)) ?? []);
  const adjusted = taroneHolm(
    scans.map(({ p }) => p),
    scans.map(({ leastP }) => leastP),
  );
  return adjusted.some((p) => p <= 0.05);
}

const joined = (before: Tally, after: Tally): Tally => ({
  counts: [...before.counts, ...after.counts],
  sizes: [...before.sizes, ...after.sizes],
});

describe('a shop where nothing changes', () => {
  test('shows a signal in at most one list of twenty, with 40 series at once', () => {
    const random = seededRandom(4);
    const shops = 400;
    let alarms = 0;
    for (let shop = 0; shop < shops; shop += 1) {
      if (signalsOf(quietShop(40, { trays: 20, random }), { random }).signals.length > 0) alarms += 1;
    }
    // Three standard errors above the stated rate.
    expect(alarms / shops).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / shops));
    // And the bound is not so loose that it could hide a fault: a rate of nought would be one.
    expect(alarms).toBeGreaterThan(0);
  });

  test('where each tray has a rate of its own, pieces alone cry wolf, and trays beside them do not', () => {
    const random = seededRandom(6);
    const shops = 60;
    const alarms = { pieces: 0, trays: 0 };
    for (let shop = 0; shop < shops; shop += 1) {
      const series = Array.from({ length: 40 }, (): Tally => {
        const sizes = Array.from({ length: 25 }, () => 12);
        // One plank in six is bad throughout.
        return {
          sizes,
          counts: sizes.map((size) => flawedOf(size, { rate: random() < 1 / 6 ? 0.3 : 0.02, random })),
        };
      });
      if (hasAlarmByPieces(series)) alarms.pieces += 1;
      if (signalsOf(series, { random }).signals.length > 0) alarms.trays += 1;
    }
    expect(alarms.pieces / shops).toBeGreaterThan(0.5);
    expect(alarms.trays / shops).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / shops));
  });
});

describe('a change', () => {
  test('one series of forty that goes from 5 % to 25 % is named, with where and how much', () => {
    const random = seededRandom(9);
    const shops = 10;
    let named = 0;
    for (let shop = 0; shop < shops; shop += 1) {
      const series = quietShop(40, { trays: 25, random });
      series[7] = joined(traysAt(0.05, { trays: 25, random }), traysAt(0.25, { trays: 15, random }));
      const signal = signalsOf(series, { random }).signals.find(({ series: of }) => of === 7);
      if (!signal) continue;
      named += 1;
      expect(signal.direction).toBe('worse');
      expect(Math.abs(signal.since - 25)).toBeLessThan(8);
      expect(signal.before.flawed / signal.before.pieces).toBeLessThan(0.09);
      expect(signal.after.flawed / signal.after.pieces).toBeGreaterThan(0.15);
    }
    expect(named).toBeGreaterThanOrEqual(9);
  });

  test('for the better is one too', () => {
    const random = seededRandom(10);
    const tally = joined(traysAt(0.2, { trays: 25, random }), traysAt(0.03, { trays: 25, random }));
    expect(signalsOf([tally], { random }).signals[0]).toMatchObject({ series: 0, direction: 'better' });
  });

  test('a doubling of 5 % after a thousand pieces is seen 1,500 later in most shops of 40 series (measured: 75 in 100)', () => {
    const random = seededRandom(12);
    const shops = 50;
    let found = 0;
    for (let shop = 0; shop < shops; shop += 1) {
      const series = quietShop(40, { trays: 83, random });
      series[0] = joined(traysAt(0.05, { trays: 83, random }), traysAt(0.1, { trays: 125, random }));
      if (
        signalsOf(series, { random }).signals.some(
          ({ series: of, direction }) => of === 0 && direction === 'worse',
        )
      )
        found += 1;
    }
    expect(found / shops).toBeGreaterThan(0.6);
  });

  test('that was answered is no news when the series begins at it', () => {
    const random = seededRandom(11);
    const tally = joined(traysAt(0.05, { trays: 30, random }), traysAt(0.3, { trays: 30, random }));
    const since = signalsOf([tally], { random }).signals[0]?.since ?? 0;
    const rest = { counts: tally.counts.slice(since), sizes: tally.sizes.slice(since) };
    expect(signalsOf([rest], { random }).signals).toEqual([]);
  });
});

describe('a stage over all its woods', () => {
  /** Eight woods at 5 %, 120 pieces each, mixed; from the middle on each fails `times` as often. */
  function stageOf(times: number, random: Random): Tally {
    const trays = Array.from({ length: 80 }, (_, at) => ({
      kind: `wood ${Math.floor(random() * 8)}`,
      flawed: flawedOf(12, { rate: at < 40 ? 0.05 : 0.05 * times, random }),
    }));
    return {
      counts: trays.map(({ flawed }) => flawed),
      sizes: trays.map(() => 12),
      kinds: trays.map(({ kind }) => kind),
    };
  }

  test('shows what no wood alone has pieces enough to show', () => {
    const random = seededRandom(31);
    const shops = 8;
    const found = { stage: 0, wood: 0 };
    for (let shop = 0; shop < shops; shop += 1) {
      const stage = stageOf(4, random);
      const woods = Array.from({ length: 8 }, (_, wood): Tally => {
        const own = [...stage.counts.keys()].filter((at) => stage.kinds?.[at] === `wood ${wood}`);
        return { counts: own.map((at) => stage.counts[at] ?? 0), sizes: own.map(() => 12) };
      });
      const { signals } = signalsOf([stage, ...woods, ...quietShop(60, { trays: 10, random })], { random });
      if (signals.some(({ series, direction }) => series === 0 && direction === 'worse')) found.stage += 1;
      found.wood += signals.filter(({ series }) => series > 0 && series <= 8).length / 8;
    }
    expect(found.stage).toBeGreaterThanOrEqual(7);
    expect(found.wood).toBeLessThan(2);
  });

  test('is quiet where nothing changes, in one list of twenty at most', () => {
    const random = seededRandom(32);
    const shops = 100;
    let alarms = 0;
    for (let shop = 0; shop < shops; shop += 1) {
      const stages = Array.from({ length: 8 }, () => stageOf(1, random));
      if (signalsOf(stages, { random }).signals.length > 0) alarms += 1;
    }
    expect(alarms / shops).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / shops));
  });
});

describe('a list', () => {
  test('is the same for the same seed, and the strangest comes first', () => {
    const random = seededRandom(14);
    const strange = [0.3, 0.5, 0.4].map((rate) =>
      joined(traysAt(0.02, { trays: 20, random }), traysAt(rate, { trays: 20, random })),
    );
    const list = signalsOf(strange, { random: seededRandom(1) });
    expect(signalsOf(strange, { random: seededRandom(1) })).toEqual(list);
    expect(list.signals.map(({ adjustedP }) => adjustedP)).toEqual(
      list.signals.map(({ adjustedP }) => adjustedP).toSorted((a, b) => a - b),
    );
    expect(list.signals).toHaveLength(3);
  });

  test('series that hold too little are not watched, and cost the others nothing', () => {
    const random = seededRandom(15);
    const busy = joined(traysAt(0.02, { trays: 20, random }), traysAt(0.25, { trays: 20, random }));
    const idle = Array.from({ length: 100 }, (): Tally => ({ counts: [0, 1], sizes: [3, 3] }));
    const alone = signalsOf([busy], { random });
    const among = signalsOf([busy, ...idle], { random });
    expect(alone.watched).toBe(1);
    expect(among.watched).toBe(1);
    expect(among.signals.map(({ series }) => series)).toEqual([0]);
  });

  test('of nothing is empty', () => {
    expect(signalsOf([], { random: seededRandom(1) })).toEqual({ signals: [], falseAlarm: 0.05, watched: 0 });
    expect(signalsOf([{ counts: [], sizes: [] }], { random: seededRandom(1) }).signals).toEqual([]);
    expect(() => signalsOf([], { random: seededRandom(1), falseAlarm: 1 })).toThrow(RangeError);
  });
});
