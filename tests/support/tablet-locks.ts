import type { Locks } from '../../src/app/one-at-a-time.ts';

interface Asked {
  readonly grant: () => void;
  readonly isOff: () => boolean;
}

/** Locks of one tablet as the Web Locks API (W3C, section 4) tells of exclusive ones: a queue, which may be left, and stealing. */
export function tabletLocks() {
  let stolen: ((error: DOMException) => void) | undefined;
  const queue: Asked[] = [];

  function next(): void {
    stolen = undefined;
    const asked = queue.shift();
    if (asked?.isOff()) next();
    else asked?.grant();
  }

  const request = (
    name: string,
    { steal = false, signal }: LockOptions,
    run: (lock: Lock) => unknown,
  ): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const grant = () => {
        let isStolen = false;
        stolen = (error) => {
          isStolen = true;
          reject(error);
        };
        void Promise.resolve(run({ name, mode: 'exclusive' })).then((result) => {
          if (isStolen) return;
          resolve(result);
          next();
        }, reject);
      };
      if (steal && signal) throw new DOMException('steal and signal together', 'NotSupportedError');
      signal?.addEventListener('abort', () => reject(signal.reason));
      if (steal) {
        stolen?.(new DOMException('The lock was stolen.', 'AbortError'));
        grant();
      } else if (stolen) queue.push({ grant, isOff: () => signal?.aborted ?? false });
      else grant();
    });

  return { request } as unknown as Locks;
}
