import type { Joined } from '../replication/joined.ts';
import type { FromReplica, NotJoined, ToReplica } from '../worker/replica-protocol.ts';
import type { Timer } from './saver.ts';

export type StartReplicaWorker = () => Pick<Worker, 'postMessage' | 'terminate' | 'addEventListener'>;
type ReplicaWorker = ReturnType<StartReplicaWorker>;

const tell = (worker: ReplicaWorker, message: ToReplica) => worker.postMessage(message);
const onMessage = (worker: ReplicaWorker, listen: (data: FromReplica) => void) =>
  worker.addEventListener('message', (({ data }: { data: FromReplica }) =>
    listen(data)) as unknown as EventListener);

/** A worker that does not end by itself is ended (ms). */
const untilEnded = 2000;

interface RunnerParts {
  readonly start: StartReplicaWorker | undefined;
  readonly timer: Timer;
  readonly hear: (data: FromReplica) => void;
}

/** Begins and ends the worker that keeps a store and the broker the same. */
export function replicaRunner({ start, timer, hear }: RunnerParts) {
  let worker: ReplicaWorker | undefined;
  return {
    isRunning: () => worker !== undefined,
    begin(joined: Joined, store: string): void {
      if (worker || !start) return;
      const begun = start();
      worker = begun;
      onMessage(begun, (data) => {
        // How it stands is told by whoever runs now; what an ending one has still taken in is news all the same.
        if (worker === begun || data.kind === 'merged') hear(data);
      });
      tell(begun, { kind: 'run', store, joined });
    },
    hurry(): void {
      if (worker) tell(worker, { kind: 'hurry' });
    },
    end(): void {
      const ending = worker;
      worker = undefined;
      if (!ending) return;
      const cancel = timer.after(untilEnded, () => ending.terminate());
      onMessage(ending, ({ kind }) => {
        if (kind !== 'stopped') return;
        cancel();
        ending.terminate();
      });
      tell(ending, { kind: 'stop' });
    },
  };
}

/** Has a worker of its own take a seat, and ends it. */
export function takeSeatInWorker(
  start: StartReplicaWorker | undefined,
  joining: Extract<ToReplica, { kind: 'join' }>,
): Promise<Joined | NotJoined> {
  const asked = start?.();
  if (!asked) return Promise.resolve({ kind: 'unreachable' });
  return new Promise<Joined | NotJoined>((resolve) => {
    onMessage(asked, (data) => {
      if (data.kind === 'joined') resolve(data.joined);
      if (data.kind === 'not-joined') resolve(data.because);
    });
    asked.addEventListener('error', () => resolve({ kind: 'unreachable' }));
    tell(asked, joining);
  }).finally(() => asked.terminate());
}
