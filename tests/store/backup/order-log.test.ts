import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Entry, entryAfter, type Link } from '../../../src/domain/log/chain.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import { packRun, runLength } from '../../../src/domain/packed/pack-run.ts';
import type { PackedRun } from '../../../src/domain/packed/packed-run.ts';
import { linesOf } from '../../../src/store/backup/log-section.ts';
import { inBackupOrder } from '../../../src/store/backup/order-log.ts';
import { writeBackup } from '../../../src/store/backup/write-backup.ts';
import { longLog } from '../../support/long-logs.ts';
import { about } from './sample-log.ts';

type Chain = readonly Entry<ShopEvent>[];

/** The order of a backup, entry by entry: what packed runs must come to as well. */
function slowOrder(entries: readonly Entry[]): readonly Entry[] {
  const byText = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
  const byNumber = (a: Entry, b: Entry) => a.event.seq - b.event.seq || byText(a.link, b.link);
  const stations = [...new Set(entries.map(({ event }) => event.station))].sort(byText);
  return stations.flatMap((station) => {
    const own = entries.filter(({ event }) => event.station === station).sort(byNumber);
    const links = new Set(own.map(({ link }) => link));
    const withNext = (entry: Entry): readonly Entry[] => [entry, ...after(entry.link)];
    const after = (link: Link) => own.filter(({ prev }) => prev === link).flatMap(withNext);
    return own.filter(({ prev }) => !links.has(prev)).flatMap(withNext);
  });
}

/** Chains of two stations, and what clones wrote that left a chain somewhere. */
const chains = fc
  .record({
    lengths: fc.tuple(fc.integer({ min: 1, max: 14 }), fc.integer({ min: 0, max: 5 })),
    clones: fc.array(
      fc.record({
        of: fc.nat({ max: 3 }),
        at: fc.nat({ max: 13 }),
        length: fc.integer({ min: 1, max: 9 }),
      }),
      { maxLength: 3 },
    ),
  })
  .map(({ lengths: [z, y], clones }) => {
    const all: Chain[] = [longLog(z, 'station-z'), longLog(y, 'station-y')];
    clones.forEach(({ of, at, length }, clone) => {
      const from = all[of % all.length] ?? [];
      const left = from[at % Math.max(1, from.length)];
      if (left) all.push(toldByClone(left, { length, tick: clone + 1 }));
    });
    return all;
  });

function toldByClone(left: Entry<ShopEvent>, { length, tick }: { length: number; tick: number }): Chain {
  const told: Entry<ShopEvent>[] = [];
  for (let at = 1; at <= length; at += 1) {
    const event = { ...left.event, seq: left.event.seq + at, stamp: { ...left.event.stamp, tick } };
    told.push(entryAfter(told.at(-1)?.link ?? left.link, event));
  }
  return told;
}

/** What stands at a place of a chain: is lost, or is kept, and whether a run ends before it. */
const places = fc.array(fc.record({ lost: fc.boolean(), cut: fc.boolean(), packed: fc.boolean() }), {
  minLength: 1,
  maxLength: 40,
});

/** The same chains with gaps, some of them packed. */
function packedHereAndThere(
  all: readonly Chain[],
  how: readonly { lost: boolean; cut: boolean; packed: boolean }[],
) {
  const kept: Entry[] = [];
  const log: { runs: PackedRun[]; entries: Entry[] } = { runs: [], entries: [] };
  let place = 0;
  for (const chain of all) {
    let open: { entry: Entry }[] = [];
    let packed = true;
    const close = () => {
      if (open.length > 0 && packed) log.runs.push(packRun(open));
      else log.entries.push(...open.map(({ entry }) => entry));
      open = [];
    };
    for (const entry of chain) {
      const here = how[place % how.length];
      place += 1;
      if (here?.lost && place % 3 === 0) continue;
      kept.push(entry);
      if (here?.cut || runLength([...open, { entry }]) <= open.length) {
        close();
        packed = here?.packed ?? true;
      }
      open.push({ entry });
    }
    close();
  }
  return { kept, log };
}

test('a log has one order, whatever of it is packed, also where clones left a packed run in its midst', () => {
  fc.assert(
    fc.property(chains, places, fc.infiniteStream(fc.nat()), (all, how, chance) => {
      const { kept, log } = packedHereAndThere(all, how);
      const mixed = log.entries
        .map((entry) => ({ entry, by: chance.next().value }))
        .sort((a, b) => a.by - b.by)
        .map(({ entry }) => entry);
      const sections = inBackupOrder({ runs: log.runs.toReversed(), entries: mixed });
      const lines = sections.flatMap((station) =>
        station.sections.flatMap((section) => [...linesOf(section)].map(({ text }) => text)),
      );
      expect(lines).toEqual(slowOrder(kept).map((entry) => JSON.stringify(entry)));
      expect(writeBackup({ ...log, about })).toEqual(writeBackup({ entries: kept, about }));
    }),
  );
});

test('a run that does not end in its link makes no file', () => {
  const [first, ...rest] = longLog(9);
  const run = packRun(rest.map((entry) => ({ entry })));
  const spoilt = (prev: Link) => () => writeBackup({ runs: [{ ...run, prev }], entries: [], about });
  expect(spoilt(first?.prev ?? run.link)).toThrow('does not end in its link');
  expect(spoilt(run.link)).toThrow('follow on from each other');
});
