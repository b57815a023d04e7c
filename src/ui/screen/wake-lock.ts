/** Whether the screen stays on: the platform keeps it awake, has not answered yet, or does not agree. */
export type Waking = 'asked' | 'kept' | 'refused';

export interface WakeParts {
  /** The platform's wake lock; undefined where it has none. */
  readonly wakeLock: Pick<WakeLock, 'request'> | undefined;
  readonly page: Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;
  readonly tell: (waking: Waking) => void;
}

/**
 * Keeps the screen awake until the returned function is called. A lock is lost whenever the page goes out of sight or
 * the screen is switched off: it is asked for anew at each return to view, and when the platform takes it away in between.
 */
export const keepAwake = ({ wakeLock, page, tell }: WakeParts): (() => void) => {
  let held: WakeLockSentinel | undefined;
  let isOver = false;
  let isAsking = false;

  const ask = async (): Promise<void> => {
    if (isOver || isAsking || held || page.visibilityState !== 'visible') return;
    if (!wakeLock) return tell('refused');
    isAsking = true;
    try {
      const lock = await wakeLock.request('screen');
      isAsking = false;
      // Meanwhile the screen that asked may have gone.
      if (isOver) return await lock.release();
      held = lock;
      lock.addEventListener('release', () => lost(lock));
      tell('kept');
    } catch {
      // A low battery is a usual reason. The next return to view asks again.
      isAsking = false;
      if (!isOver) tell('refused');
    }
  };

  const lost = (lock: WakeLockSentinel): void => {
    if (held !== lock) return;
    held = undefined;
    void ask();
  };

  const onView = (): void => void ask();
  page.addEventListener('visibilitychange', onView);
  void ask();
  return () => {
    isOver = true;
    page.removeEventListener('visibilitychange', onView);
    const lock = held;
    held = undefined;
    lock?.release().catch(() => undefined);
  };
};
