/** So long (ms) after the last touch a hand is taken to be at work: who taps pieces off a tray is back by then. */
const rest = 1500;

export interface MakingWayParts {
  /** Lets others have their turn. */
  readonly turn: () => Promise<void>;
  /** Milliseconds that only rise. */
  readonly now: () => number;
  readonly sleep: (ms: number) => Promise<void>;
}

/**
 * A turn for work that can wait: while a hand is at work it does not come back. On two cores such work beside it slowed a tap
 * by half and more, though it ran in a worker.
 */
export function makingWay({ turn, now, sleep }: MakingWayParts) {
  let restsUntil = 0;
  return {
    /** A hand has touched something. */
    touched(): void {
      restsUntil = now() + rest;
    },
    async turn(): Promise<void> {
      await turn();
      for (let left = restsUntil - now(); left > 0; left = restsUntil - now()) await sleep(left);
    },
  };
}
