import { useEffect, useState } from 'preact/hooks';
import { afterStep, waitLeft } from '../../app/bench-lock.ts';
import { systemClock } from '../../app/clock.ts';
import { useApp } from './app-context.ts';

/** Whole seconds until the next PIN is taken; 0 when it is taken now. */
export function useWaitLeft(): number {
  const { lock } = useApp().preferences;
  const [, tick] = useState(0);
  const left = lock.value ? Math.ceil(waitLeft(lock.value, systemClock.now()) / 1000) : 0;
  const waits = left > 0;
  useEffect(() => {
    if (!waits) return;
    const timer = setInterval(() => {
      lock.value = afterStep(lock.value, { kind: 'tick', now: systemClock.now() });
      tick((count) => count + 1);
    }, 250);
    return () => clearInterval(timer);
  }, [lock, waits]);
  return left;
}
