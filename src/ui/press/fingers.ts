/**
 * Watches the whole page for what no single button can feel: how many fingers are down, when one was last lifted, and
 * when the app came back to view. Listeners are set once, at the first use.
 */
import { pressLimits } from './press-rules.ts';

const down = new Set<number>();
const onCrowd = new Set<() => void>();
let backInViewAt: number | undefined;
let liftedAt: number | undefined;
let watching = false;

const put = (event: PointerEvent): void => {
  if (event.pointerType !== 'touch') return;
  down.add(event.pointerId);
  if (down.size >= pressLimits.handFingers) for (const tell of onCrowd) tell();
};

const lift = (event: PointerEvent): void => {
  down.delete(event.pointerId);
  if (event.type === 'pointerup') liftedAt = event.timeStamp;
};

const watch = (): void => {
  if (watching) return;
  watching = true;
  // Before any button hears of them: the count must be right when the button asks.
  addEventListener('pointerdown', put, { capture: true, passive: true });
  addEventListener('pointerup', lift, { capture: true, passive: true });
  addEventListener('pointercancel', lift, { capture: true, passive: true });
  document.addEventListener('visibilitychange', (event) => {
    if (document.visibilityState !== 'visible') return;
    backInViewAt = event.timeStamp;
    // Lifted behind the lock screen, where nobody told us.
    down.clear();
  });
};

/** How many fingers touch the screen now. */
export const fingersDown = (): number => down.size;

/** When the app last came back to view, on the clock of event time stamps. */
export const lastBackInView = (): number | undefined => backInViewAt;

/** When a pointer was last lifted, on the clock of event time stamps. */
export const lastLift = (): number | undefined => liftedAt;

/**
 * A press acts as the finger lifts, and the browser's click comes after. By then the act may have put something else
 * under the finger, and the click must not reach it. When no click comes, because its button is gone, the next finger
 * that comes down ends the wait: its own click is not an echo.
 */
export const swallowEcho = (): void => {
  const stop = (): void => {
    removeEventListener('click', swallow, true);
    removeEventListener('pointerdown', stop, true);
  };
  const swallow = (event: MouseEvent): void => {
    stop();
    if (!isEcho(event)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  addEventListener('click', swallow, true);
  addEventListener('pointerdown', stop, true);
};

const isEcho = (click: MouseEvent): boolean =>
  liftedAt !== undefined && click.timeStamp - liftedAt < pressLimits.clickEchoMs;

/** Calls back whenever a third finger comes down. Returns how to stop. */
export const watchFingers = (crowded: () => void): (() => void) => {
  watch();
  onCrowd.add(crowded);
  return () => onCrowd.delete(crowded);
};
