/** Works out forecasts beside the window: thousands of replications that no tap may wait for. */
import { buffersOfRuns } from '../domain/plan/forecast/runs.ts';
import { forecastServer } from '../domain/plan/forecast/serve-forecast.ts';
import type { FromForecastWorker, ToForecastWorker } from './forecast-protocol.ts';
import { handsChannel } from './hands-protocol.ts';
import { makingWay } from './making-way.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromForecastWorker, handOver: readonly ArrayBuffer[] = []) =>
  worker.postMessage(message, [...handOver]);

/** Messages that came meanwhile are heard first. A timer would wait 4 ms each time (HTML, timers, step 5). */
const { port1, port2 } = new MessageChannel();
let go = () => {};
port1.onmessage = () => go();
const way = makingWay({
  turn: () =>
    new Promise((resolve) => {
      go = resolve;
      port2.postMessage(null);
    }),
  now: () => performance.now(),
  sleep: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
});
if (typeof BroadcastChannel !== 'undefined') new BroadcastChannel(handsChannel).onmessage = way.touched;
const server = forecastServer(way.turn);

worker.addEventListener('message', ({ data }: MessageEvent<ToForecastWorker>) => {
  switch (data.kind) {
    case 'run': {
      const { call } = data;
      void server.run(data, {
        progress: (done) => say({ kind: 'progress', call, done }),
        runs: (runs) => say({ kind: 'runs', call, runs }, buffersOfRuns(runs)),
        failed: (problem) => say({ kind: 'failed', call, problem }),
      });
      break;
    }
    case 'sum':
      try {
        say({ kind: 'forecast', call: data.call, forecast: server.sum(data.question, data.runs) });
      } catch (error) {
        say({ kind: 'failed', call: data.call, problem: String(error) });
      }
      break;
    case 'cancel':
      server.cancel();
      break;
  }
});
