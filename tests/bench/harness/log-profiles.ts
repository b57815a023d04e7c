/** Profiles with nothing but a long log, each kept in one way; see `in-page/read.ts`. */
import type { KeeperName } from '../in-page/read.ts';
import type { Bench } from './bench.ts';

/** The end of the long log, ms UTC: the same in every run. */
export const until = Date.UTC(2026, 2, 16, 12);

/** A profile with a log of so many events; prepared once a run. The app's store is database `log` of the bench's pages. */
export function logProfile(bench: Bench, { keeper, events }: { keeper: KeeperName; events: number }) {
  return bench.once(`${keeper} with ${events}`, async () => {
    const profile = bench.newProfile();
    await bench.inPage({ profile, module: 'read' }, ({ call }) => call('fill', { keeper, events, until }));
    return profile;
  });
}
