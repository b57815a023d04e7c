/**
 * The same shop worked off by another simulation, written for itself piece by piece with plain objects (the one that the
 * calibration takes for the truth): on each evening both have as many pieces finished, within four standard errors.
 */
import { expect, test } from 'vitest';
import { seededRandom } from '../../../../src/domain/chance/seeded-random.ts';
import type { PlanModel } from '../../../../src/domain/plan/forecast/plan-model.ts';
import { replicator } from '../../../../src/domain/plan/forecast/replicator.ts';
import { meanOf } from '../../../calibration/row.ts';
import { openShop } from '../../../calibration/work-off.ts';
import { aLot, aPlan, aStep, day, hour, known, takes, workWeeks } from './plans.ts';

const times = 400;
const evenings = Array.from({ length: 21 }, (_, at) => at * day + 17 * hour);
const minutes = [3, 0.4, 4, 3, 2, 0.4, 3, 2];
const [trays, cv, lost] = [16, 0.4, 0.02];
const cures = new Map([
  [1, 25],
  [5, 9],
]);

interface Scene {
  readonly room: number;
  readonly people: number;
  readonly takes: PlanModel['takes'];
}

/** Finished pieces on each evening, one row for each time. */
function byForecast({ room, people, takes: how }: Scene): readonly number[][] {
  const steps = minutes.map((each, stage) =>
    aStep(stage, 0, { minutes: takes(each, cv), loading: takes(1, cv), lost: known(lost) }),
  );
  const plan = aPlan(steps, {
    now: 8 * hour,
    stages: minutes.map((_, stage) => {
      const hours = cures.get(stage);
      return hours === undefined
        ? { kind: 'work', resource: null }
        : { kind: 'hold', resource: stage === 1 ? 0 : 1, cureMinutes: 60 * hours };
    }),
    resources: ['clamps', 'rack'].map((name) => ({ name, capacity: room })),
    people: Array.from({ length: people }, () => ({ hours: workWeeks(12) })),
    lots: Array.from({ length: trays }, () => aLot(9)),
    takes: how,
  });
  const { good } = replicator({ plan, marks: evenings, seed: Number(process.env.SEED), replications: times })(
    0,
    times,
  );
  return Array.from({ length: times }, (_, run) => [
    ...good.subarray(run * evenings.length, (run + 1) * evenings.length),
  ]);
}

function pieceByPiece({ room, people, takes: how }: Scene): readonly number[][] {
  const random = seededRandom(Number(process.env.SEED));
  const never = [0];
  return Array.from({ length: times }, () => {
    const shop = {
      stages: minutes.map((each, stage) => ({
        ...{ cureHours: cures.get(stage) ?? null, room, minutes: [each], loading: [1], cv },
        ...{ lost: [lost], lowered: never, back: never },
      })),
      ...{ people, moods: 0, interrupted: 0, away: 0, change: 0 },
      orderly: how === 'any' ? 0.5 + random() / 2 : 1,
      tends: how === 'any' ? random() < 0.5 : true,
      fills: 0.25 + 0.75 * random(),
    };
    const world = openShop(shop, {
      trays: Array.from({ length: trays }, () => ({ wood: 0, pieces: 9 })),
      random,
    });
    world.workUntil(Number.POSITIVE_INFINITY);
    const finished = world.taps.filter(({ to }) => to.stage === minutes.length);
    return evenings.map((evening) => finished.filter(({ at }) => at <= evening).length);
  });
}

test.each<Scene>([
  { room: 30, people: 1, takes: 'any' },
  { room: 24, people: 2, takes: 'any' },
  { room: 500, people: 2, takes: 'in-order' },
])('a shop with $room places and $people at work, lots taken $takes', (scene) => {
  const [ours, others] = [byForecast(scene), pieceByPiece(scene)];
  for (const [at] of evenings.entries()) {
    const [one, other] = [ours, others].map((runs) => {
      const counts = runs.map((run) => run[at] ?? 0);
      const mean = meanOf(counts);
      return { mean, variance: meanOf(counts.map((count) => (count - mean) ** 2)) / times };
    });
    const error = Math.sqrt((one?.variance ?? 0) + (other?.variance ?? 0));
    // Half a piece: in the one times of a tray are a gamma variate, in the other sums of log-normal ones.
    expect(Math.abs((one?.mean ?? 0) - (other?.mean ?? 0))).toBeLessThan(4 * error + 0.5);
  }
});
