import * as v from 'valibot';
import { chained, type Entry, entryAfter, noLink } from '../../src/domain/log/chain.ts';
import type { Draft, ShopEvent } from '../../src/domain/log/event.ts';
import { personId, shopDayText, stageId, stationId } from '../../src/domain/log/ids.ts';
import { aWorkshop } from './a-shop.ts';

/** The least draft there is: a spell begun at a stage. */
export function spellDraft(stage: string, person = 'edda'): Draft {
  return {
    kind: 'spell-begun',
    stage: v.parse(stageId, stage),
    zone: { name: 'Europe/London', offset: 0 },
    day: v.parse(shopDayText, '2026-03-02'),
    person: v.parse(personId, person),
  };
}

/** The log of a small shop of another station: set-up, a tray, passes, a flaw, an undo. */
export function foreignLog(station = 'station-z'): readonly ShopEvent[] {
  const shop = aWorkshop({ station, letter: 'C' });
  const tray = shop.tray('ash-copper', 8);
  shop.pass(tray, 'bore', { pieces: 3 });
  const slip = shop.pass(tray, 'bore');
  shop.undo(slip);
  shop.flaw(tray, 'bore', { why: 'blown', outcome: { kind: 'scrapped', saved: [] } });
  shop.split(tray, 'bore', { pieces: 2 });
  return shop.log;
}

/** The same log as it comes from a file or another tablet. */
export function foreignEntries(station = 'station-z'): readonly Entry<ShopEvent>[] {
  return chained(foreignLog(station));
}

/** An event that a later version of the app might write. */
export const newerEvent = {
  ...spellDraft('turn'),
  kind: 'weighed',
  station: v.parse(stationId, 'station-z'),
  seq: 900,
  stamp: { wall: 5, tick: 0 },
  grams: 41,
} as const;
export const newerEntry: Entry = entryAfter(noLink, newerEvent);
