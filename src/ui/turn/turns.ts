import { type ReadonlySignal, signal } from '@preact/signals';

/** What waits to be drawn, the next one first. */
const waiting: (() => void)[] = [];
/** Where the next one that asks is put: what a part brings with it comes before what stands below that part. */
let place = 0;
const drawing = signal(false);

/** Whether some of the screen is still to come; for `aria-busy` of what it comes in. */
export const stillDrawing: ReadonlySignal<boolean> = drawing;

/**
 * Calls `draw` when its turn comes: each in a task of its own, so that a tap in between is answered, in the order in
 * which they asked; those that ask because something was drawn come right after it. Returns what gives the turn up.
 */
export function waitForTurn(draw: () => void): () => void {
  waiting.splice(place, 0, draw);
  place += 1;
  if (!drawing.peek()) {
    drawing.value = true;
    // A timer and no frame: what is opened in a window that is out of sight is to be whole when it comes into view.
    setTimeout(giveTurn, 0);
  }
  return () => {
    const at = waiting.indexOf(draw);
    if (at < 0) return;
    waiting.splice(at, 1);
    if (at < place) place -= 1;
  };
}

function giveTurn(): void {
  place = 0;
  const draw = waiting.shift();
  if (!draw) {
    drawing.value = false;
    return;
  }
  setTimeout(giveTurn, 0);
  draw();
}
