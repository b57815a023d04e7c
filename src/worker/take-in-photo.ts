import type { PhotoHash } from '../domain/log/photo-facts.ts';
import type { NewPhoto } from '../store/photos/photo-store.ts';
import type { FromPhotoWorker, ToPhotoWorker } from './photo-protocol.ts';

/**
 * Has a photo from elsewhere judged and its small one made; undefined when it is no photo. Each has a worker to itself, which
 * ends with it: so a picture that is too much for one costs no other, and the code for pictures is loaded when one comes.
 */
export function takeInPhoto(photo: {
  readonly hash: PhotoHash;
  readonly bytes: Uint8Array<ArrayBuffer>;
}): Promise<NewPhoto | undefined> {
  const worker = new Worker(new URL('./photo-worker.ts', import.meta.url), { type: 'module' });
  const made = new Promise<NewPhoto | undefined>((resolve) => {
    worker.addEventListener('message', ({ data }: MessageEvent<FromPhotoWorker>) =>
      resolve(data.kind === 'made' ? data.photo : undefined),
    );
    worker.addEventListener('error', () => resolve(undefined));
  });
  worker.postMessage({ id: 0, kind: 'take-in', ...photo } satisfies ToPhotoWorker);
  return made.finally(() => worker.terminate());
}
