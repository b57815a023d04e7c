import { describe, expect, test } from 'vitest';
import { openForecast, type StartForecastWorker } from '../../src/app/forecast.ts';
import type { ForecastQuestion } from '../../src/domain/plan/forecast/forecast.ts';
import { forecast } from '../../src/domain/plan/forecast/forecast-desk.ts';
import { forecastServer } from '../../src/domain/plan/forecast/serve-forecast.ts';
import type { FromForecastWorker, ToForecastWorker } from '../../src/worker/forecast-protocol.ts';
import { aLot, aPlan, aStep, day, takes } from '../domain/plan/forecast/plans.ts';

const plan = aPlan(
  [aStep(0, 0, { minutes: takes(5, 0.5), lost: { kind: 'beta', alpha: 1, beta: 9, shared: 0 } })],
  { lots: [aLot(8), aLot(9)] },
);
const question: ForecastQuestion = { plan, marks: [day], seed: 3, replications: 230, confidence: 0.9 };

/** A worker without a thread: what it is sent, and what it says, is cloned as a browser clones it. */
function someWorkers() {
  const world = { started: 0, ended: 0, runs: 0, fail: (_message: string) => {} };
  const start = (() => {
    world.started += 1;
    let say = (_message: FromForecastWorker) => {};
    const server = forecastServer(() => new Promise((resolve) => setTimeout(resolve)));
    return {
      postMessage(sent: ToForecastWorker) {
        const message = structuredClone(sent);
        if (message.kind === 'cancel') server.cancel();
        if (message.kind === 'sum') {
          const told = {
            kind: 'forecast',
            call: message.call,
            forecast: server.sum(message.question, message.runs),
          } as const;
          queueMicrotask(() => say(told));
        }
        if (message.kind !== 'run') return;
        const { call } = message;
        void server.run(message, {
          progress: (done) => say({ kind: 'progress', call, done }),
          runs: (runs) => {
            world.runs += 1;
            say({ kind: 'runs', call, runs: structuredClone(runs) });
          },
          failed: (problem) => say({ kind: 'failed', call, problem }),
        });
      },
      addEventListener(kind: string, listen: (event: object) => void) {
        if (kind === 'message') say = (data) => listen({ data });
        else world.fail = (message) => listen({ message });
      },
      terminate() {
        world.ended += 1;
      },
    };
  }) as unknown as StartForecastWorker;
  return { start, world };
}

describe.each([
  ['in the window', 0],
  ['in a worker', 1],
  ['in two workers', 2],
])('a forecast %s', (_, workers) => {
  const opened = () => {
    const { start, world } = someWorkers();
    return { door: openForecast({ start: workers === 0 ? undefined : start, workers }), world };
  };

  test('says the same as one that is worked out here and now, and how far it has come', async () => {
    const { door, world } = opened();
    const seen: number[] = [];
    door.state.subscribe((state) => {
      if (state.kind === 'working') seen.push(state.done);
    });
    const found = await door.ask(question);
    expect(found).toEqual(forecast(question));
    expect(door.state.value).toEqual({ kind: 'ready', last: { question, forecast: found } });
    expect(seen[0]).toBe(0);
    expect(seen.at(-1)).toBe(230);
    expect(seen).toEqual(seen.toSorted((a, b) => a - b));
    expect(seen.length).toBeGreaterThan(4);
    expect(world.started).toBe(workers);
  });

  test('gives up what is no longer wanted, and shows the last one until there is a newer', async () => {
    const { door } = opened();
    const first = await door.ask(question);
    const long = door.ask({ ...question, replications: 1_000_000 });
    expect(door.state.value).toMatchObject({ kind: 'working', of: 1_000_000, last: { forecast: first } });
    const other = door.ask({ ...question, seed: 4 });
    expect(await long).toBeNull();
    expect(await other).toEqual(forecast({ ...question, seed: 4 }));
  });

  test('is cancelled, also before it has begun, and can be asked again', async () => {
    const { door } = opened();
    const asked = door.ask({ ...question, replications: 1_000_000 });
    door.cancel();
    expect(await asked).toBeNull();
    expect(door.state.value).toEqual({ kind: 'none', last: null });
    expect(await door.ask(question)).toEqual(forecast(question));
    door.cancel();
    expect(door.state.value.kind).toBe('ready');
  });

  test('that cannot be worked out says so, and a plan without hands says why', async () => {
    const { door } = opened();
    expect(await door.ask({ ...question, marks: [2, 1] })).toBeNull();
    expect(door.state.value).toMatchObject({
      kind: 'failed',
      problem: expect.stringContaining('Marks ascend'),
    });
    expect(await door.ask({ ...question, plan: { ...plan, people: [] } })).toEqual({ kind: 'no-hands' });
  });

  test('ends with its door', async () => {
    const { door, world } = opened();
    const asked = door.ask({ ...question, replications: 1_000_000 });
    door.close();
    expect(await asked).toBeNull();
    expect(await door.ask(question)).toBeNull();
    expect(world.ended).toBe(world.started);
  });
});

test('a worker that breaks is said, and another one is started the next time', async () => {
  const { start, world } = someWorkers();
  const door = openForecast({ start, workers: 1 });
  const asked = door.ask({ ...question, replications: 1_000_000 });
  world.fail('out of memory');
  expect(await asked).toBeNull();
  expect(door.state.value).toMatchObject({
    kind: 'failed',
    problem: 'Error: the worker failed: out of memory',
  });
  expect(await door.ask(question)).toEqual(forecast(question));
  expect(world.started).toBe(2);
});
