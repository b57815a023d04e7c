import { expect, test } from 'vitest';
import { readEvent } from '../../src/domain/log/read-event.ts';
import { addEvent, emptyShop } from '../../src/domain/shop/shop.ts';
import { longLog, longRuns } from './long-log.ts';

const until = Date.UTC(2026, 2, 16, 12);

test('a long log is of sound events, numbered without a gap, of a shop that has little in work at a time', () => {
  const shop = emptyShop();
  const last = new Map<string, number>();
  let events = 0;
  for (const event of longLog({ events: 20_000, until })) {
    expect(readEvent(event).kind).toBe('known');
    expect(event.seq).toBe((last.get(event.station) ?? 0) + 1);
    last.set(event.station, event.seq);
    expect(addEvent(shop, event)).toBe(true);
    events += 1;
  }
  expect(events).toBe(20_000);
  expect(shop.trays.size).toBeGreaterThan(250);
  expect(shop.positions.working.size).toBeLessThan(60);
  for (const places of shop.positions.working.values())
    for (const { pieces } of places.values()) expect(pieces).toBeGreaterThanOrEqual(0);
});

test('its runs hold as many events', () => {
  let entries = 0;
  for (const run of longRuns({ events: 70_000, until })) entries += run.entries;
  expect(entries).toBe(70_000);
});
