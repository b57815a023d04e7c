/** Makes photos of files beside the window: a large one takes a second of work that no tap may wait for. */
import { makePhoto, takeInPhoto } from './photo/make-photo.ts';
import type { FromPhotoWorker, ToPhotoWorker } from './photo-protocol.ts';

const worker = globalThis as unknown as DedicatedWorkerGlobalScope;
const say = (message: FromPhotoWorker, handOver: Transferable[] = []) =>
  worker.postMessage(message, handOver);

/** One after another: two large pictures at once could be more than a tablet has memory for. */
let queue: Promise<void> = Promise.resolve();

worker.addEventListener('message', ({ data }: MessageEvent<ToPhotoWorker>) => {
  const { id } = data;
  queue = queue.then(async () => {
    const making = data.kind === 'make' ? makePhoto(data.file) : takeInPhoto(data);
    const made = await making.catch((): 'cannot-be-opened' => 'cannot-be-opened');
    if (typeof made === 'string') say({ id, kind: 'refused', why: made });
    else say({ id, kind: 'made', photo: made }, [made.bytes.buffer, made.small.buffer]);
  });
});
