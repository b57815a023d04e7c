import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoShop } from '../../../shared/demo/demo-shop.ts';
import type { ShopEvent } from '../../../src/domain/log/event.ts';
import {
  addPage,
  frontOf,
  type PageName,
  pageOfDay,
  pageOfTray,
  pagesOf,
} from '../../../src/domain/shop/pages.ts';
import { addEvent, type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { histories, play } from '../../support/histories.ts';

/** A shop as it is opened from a snapshot, with events that come in before and between its pages. */
function reopened(snapshot: Shop, later: readonly ShopEvent[]): Shop {
  const shop = structuredClone(frontOf(snapshot));
  const pages = [...structuredClone(pagesOf(snapshot, 'all')).values()];
  const complete = new Set(shop.days.keys());
  const rest = [...later];
  for (const page of pages) {
    for (const event of rest.splice(0, Math.ceil(later.length / Math.max(1, pages.length))))
      addEvent(shop, event);
    addPage(shop, { page, complete });
  }
  for (const event of rest) addEvent(shop, event);
  return shop;
}

const demo = demoShop({ now: Date.UTC(2026, 2, 4, 14) });

describe('a snapshot in a front and pages', () => {
  test('is the shop again, whatever came in before its pages were read', () => {
    fc.assert(
      fc.property(histories, fc.nat(100), (steps, share) => {
        const { log } = play(steps);
        const cut = Math.floor((log.length * share) / 100);
        const snapshot = shopOf(log.slice(0, cut));
        expect(reopened(snapshot, log.slice(cut))).toEqual(shopOf(log));
      }),
      { numRuns: 150 },
    );
  });

  test('of the demo is the demo again, at any moment of its story', () => {
    for (const share of [0.2, 0.5, 0.9, 1]) {
      const cut = Math.floor(demo.length * share);
      expect(reopened(shopOf(demo.slice(0, cut)), demo.slice(cut))).toEqual(shopOf(demo));
    }
  });

  test('has in its front every tray that is in work and none that is done with', () => {
    const shop = shopOf(demo);
    const front = frontOf(shop);
    expect([...front.trays.keys()].sort()).toEqual([...shop.positions.working.keys()].sort());
    expect(front.positions.settled.size).toBe(0);
    expect(shop.trays.size).toBeGreaterThan(front.trays.size);
    expect([...front.days.keys()].sort()).toEqual([...shop.days.keys()].sort().slice(-2));
  });

  test('changes only on the pages of what was done: those of its day and of trays that are done with', () => {
    const steady = shopOf(demo.slice(0, -30));
    const before = structuredClone(pagesOf(steady, 'all'));
    const touched = new Set<PageName>();
    for (const event of demo.slice(-30)) {
      const moves = 'moves' in event ? event.moves : [];
      const note = () => {
        for (const { tray } of moves) if (!steady.positions.working.has(tray)) touched.add(pageOfTray(tray));
      };
      note();
      addEvent(steady, event);
      note();
      touched.add(pageOfDay(event.day));
    }
    for (const [name, page] of pagesOf(steady, 'all'))
      if (!touched.has(name)) expect(page, name).toEqual(before.get(name));
    expect([...pagesOf(steady, touched).keys()].sort()).toEqual([...touched].sort());
  });
});
