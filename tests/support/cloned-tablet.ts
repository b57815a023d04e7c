import { branchAt, toldApart } from '../../src/domain/log/branch.ts';
import { chained, type Entry } from '../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../src/domain/log/event.ts';
import { aWorkshop } from './a-shop.ts';
import { packedRuns } from './run-makers.ts';

interface Cloning {
  /** Pieces on the tray that both know. */
  readonly tray?: number;
  /** How many each of the two passes then; one more it passes and takes back. */
  readonly here?: number;
  readonly there?: number;
  /** What the clock of the clone says, ms: the same taps at the same time would be the same entries. */
  readonly wall?: number;
}

/** The log of a tablet that was cloned after it had made a tray, and the two logs that came of it: `common` entries are in both. */
export function clonedTablet({ tray = 8, here = 1, there = 3, wall = 7 }: Cloning = {}) {
  const told = (pieces: number) => {
    const shop = aWorkshop({ station: 'station-z', letter: 'C' });
    const made = shop.tray('ash-copper', tray);
    const common = shop.log.length;
    for (let piece = 0; piece < pieces; piece += 1) shop.pass(made, 'bore');
    shop.undo(shop.pass(made, 'bore'));
    return { log: shop.log, common };
  };
  const [one, other] = [told(here), told(there)];
  const shifted = other.log.map((event, at) =>
    at < other.common ? event : { ...event, stamp: { wall, tick: at } },
  );
  return { common: one.common, here: chained(one.log), there: chained(shifted) };
}

/** Both as they lie in one log: runs, those of the clone on its branch, and the events under the identities that they have there. */
export function clonedTabletInOneLog() {
  const { common, here, there } = clonedTablet();
  const own: readonly Entry[] = there.slice(common);
  const [first] = own;
  if (!first) throw new Error('the clone wrote something');
  const branch = branchAt(first);
  const eventOf = ({ event }: Entry) => event as ShopEvent;
  return {
    branch,
    runs: [...packedRuns(here).map((run) => ({ run })), ...packedRuns(own).map((run) => ({ run, branch }))],
    events: [...here.map(eventOf), ...own.map((entry) => toldApart(eventOf(entry), branch))],
  };
}
