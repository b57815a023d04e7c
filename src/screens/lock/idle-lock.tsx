import { useEffect } from 'preact/hooks';
import { afterStep } from '../../app/bench-lock.ts';
import { systemClock } from '../../app/clock.ts';
import { useApp } from '../parts/app-context.ts';

/** How often (ms) it is looked whether the tablet was left alone for long enough. */
const lookEvery = 5000;

/** Locks a tablet that nobody has touched for a while; shows nothing. */
export const IdleLock = () => {
  const { lock } = useApp().preferences;
  useEffect(() => {
    const step = (kind: 'touch' | 'tick') => () => {
      lock.value = afterStep(lock.value, { kind, now: systemClock.now() });
    };
    const touch = step('touch');
    const tick = step('tick');
    const timer = setInterval(tick, lookEvery);
    addEventListener('pointerdown', touch, { capture: true });
    addEventListener('keydown', touch, { capture: true });
    document.addEventListener('visibilitychange', tick);
    return () => {
      clearInterval(timer);
      removeEventListener('pointerdown', touch, { capture: true });
      removeEventListener('keydown', touch, { capture: true });
      document.removeEventListener('visibilitychange', tick);
    };
  }, [lock]);
  return null;
};
