import type { Begin, Request } from '../../src/store/files-protocol.ts';
import type { PlainWorker } from '../../src/store/files-worker.ts';
import type { Folder } from '../../src/worker/journal/folder.ts';
import { serve } from '../../src/worker/journal/serve.ts';

let workers = 0;

export interface FakeWorker extends PlainWorker {
  /** Something happens to the worker, as the browser tells its page. */
  readonly happens: (type: 'message' | 'error' | 'messageerror', data?: unknown) => void;
}

/** The journal worker without a thread: what it is sent, and what it says, is cloned as a browser clones it. */
export function fakeWorker({
  openFolder,
  ended = () => {},
}: {
  openFolder: (name: string) => Promise<Folder | undefined>;
  ended?: () => void;
}): FakeWorker {
  const listeners: { type: string; listener: (event: Event) => void }[] = [];
  let running = true;
  const happens: FakeWorker['happens'] = (type, data) => {
    const event = Object.assign(new Event(type), { data });
    for (const each of listeners) if (each.type === type) each.listener(event);
  };
  const hear = serve({
    openFolder,
    say: (reply) => {
      if (running) happens('message', structuredClone(reply));
    },
    newName: () => {
      workers += 1;
      return `w${workers}`;
    },
    turn: async () => {},
    chance: () => 0,
  });
  return {
    postMessage(message) {
      const sent: Begin | Request = structuredClone(message as Request);
      queueMicrotask(() => {
        if (running) void hear(sent);
      });
    },
    terminate() {
      running = false;
      ended();
    },
    addEventListener: (type, listener) => listeners.push({ type, listener }),
    happens,
  };
}
