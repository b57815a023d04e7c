import { judgeTaps, type Tap } from '../support/tap-ledger.ts';
import type { Round } from './kind-figures.ts';
import type { Look, Station } from './station.ts';

/** What a run came to: the taps against the log, and the log against the count that the screen shows. */
export function compareTaps({ before, now, taps }: { before: Look; now: Look; taps: readonly Tap[] }): Round {
  const { lost, doubled } = judgeTaps({ before: before.held, now: now.held, taps });
  // A log that has lost events has perhaps lost the pieces of the tray, too: then the count says nothing more.
  const off = lost > 0 ? 0 : now.countOff;
  return {
    acknowledged: taps.filter((tap) => tap.acknowledged).length,
    lost: lost + Math.max(0, off),
    doubled: doubled + Math.max(0, -off),
    countOff: off,
  };
}

/** A start that takes longer (ms) is noted. */
const slowStart = 3000;

/** What the screen said of a fault, as part of what a run came to. */
export function whatWasSaid(...stations: readonly Station[]): Pick<Round, 'said' | 'healed' | 'notes'> {
  const said = stations.flatMap((station) => [...station.said]);
  return {
    said:
      said.some(([what]) => what !== 'unexplained') || stations.some(({ standing }) => standing === 'shut'),
    healed: said.some(([what]) => what === 'healed'),
    notes: [
      ...said.filter(([what]) => what === 'unexplained').map(([, words]) => words),
      ...stations.filter(({ startMs }) => startMs > slowStart).map(({ startMs }) => `up after ${startMs} ms`),
    ],
  };
}
