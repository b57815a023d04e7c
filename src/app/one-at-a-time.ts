/** The part of the Web Locks API that is used; missing in old browsers and outside of secure pages. */
export type Locks = Pick<LockManager, 'request'>;

/**
 * A window may have been frozen while it holds the lock: after so long (ms) it is taken from it. Longer than a copy of a
 * million entries takes on a slow tablet, for two windows would else take it from each other over and over.
 */
const longestHold = 15 * 60_000;

export type Turn<Result> = { readonly kind: 'ran'; readonly result: Result } | { readonly kind: 'busy' };

/**
 * Runs work for which only one window at a time has the turn. Work that finds another at it is not done: the caller
 * comes again, and after a quarter of an hour of that the turn is taken away from the other. `elapsed` is in ms and
 * never set back.
 */
export function oneAtATime(name: string, locks: Locks | undefined, elapsed: () => number) {
  let busySince: number | undefined;
  return async function runAlone<Result>(work: () => Promise<Result>): Promise<Turn<Result>> {
    if (!locks) return { kind: 'ran', result: await work() };
    const steal = busySince !== undefined && elapsed() - busySince >= longestHold;
    const turn = await locks
      .request(name, steal ? { steal } : { ifAvailable: true }, (lock) => workWith(lock, work))
      .catch(busyIfTaken);
    if (turn.kind === 'ran') busySince = undefined;
    else busySince ??= elapsed();
    return turn;
  };
}

async function workWith<Result>(lock: Lock | null, work: () => Promise<Result>): Promise<Turn<Result>> {
  return lock ? { kind: 'ran', result: await work() } : { kind: 'busy' };
}

/** The turn was taken from this window, because it had been frozen: the other one does the work now. */
function busyIfTaken(error: unknown): { readonly kind: 'busy' } {
  if (error instanceof DOMException && error.name === 'AbortError') return { kind: 'busy' };
  throw error;
}
