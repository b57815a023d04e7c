import type { Begin, Request } from '../store/files-protocol.ts';
import { opfsFolder } from './journal/opfs-folder.ts';
import { serve } from './journal/serve.ts';

const hear = serve({
  openFolder: opfsFolder,
  say: (reply) => self.postMessage(reply),
  newName: () => crypto.randomUUID(),
  turn: () => new Promise((resolve) => setTimeout(resolve, 0)),
  chance: Math.random,
});

self.addEventListener('message', ({ data }: MessageEvent<Begin | Request>) => void hear(data));
