import * as v from 'valibot';
import { expect, test } from 'vitest';
import { stationId } from '../../src/domain/log/ids.ts';
import { compareStamps } from '../../src/domain/log/stamp.ts';
import { entriesOf } from '../../src/domain/packed/unpack-run.ts';
import { headAfterMerge, newHead } from '../../src/store/head.ts';
import { longRuns } from '../support/long-log.ts';

const until = Date.UTC(2026, 2, 16, 12);
const runs = [...longRuns({ events: 900, until })];
const entries = runs.flatMap((run) => entriesOf(run));
const stamps = entries.flatMap(({ event }) => ('stamp' in event ? [event.stamp] : []));
const empty = newHead(v.parse(stationId, 'station-a'));

test.each([
  ['behind what comes in', until - 60 * 60_000],
  ['ahead of it', until + 60 * 60_000],
])('the clock of a tablet that is %s is after all stamps of the runs that came in', (_, now) => {
  const { stamp, holding } = headAfterMerge(empty, { runs, entries: [], now });
  const ofEntries = headAfterMerge(empty, { runs: [], entries, now });
  expect(stamps.every((seen) => compareStamps(seen, stamp) < 0)).toBe(true);
  expect(stamp.wall).toBe(ofEntries.stamp.wall);
  expect(holding).toEqual(ofEntries.holding);
});
