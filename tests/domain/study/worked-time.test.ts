import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import type { PieceMinutes } from '../../../src/domain/study/piece-minutes.ts';
import { mondayOf, scrappedTime, workedByDay, workedByWeek } from '../../../src/domain/study/worked-time.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { paced, testRoutes as routes, studied } from '../../support/study-makers.ts';
import { person, stage } from '../../support/workshop.ts';

/** Saturday to Tuesday. */
function fourDays() {
  const shop = aWorkshop({ now: Date.UTC(2026, 1, 28, 9) });
  const tray = shop.tray('ash-copper', 20);
  shop.pace(6 * 60_000);
  shop.pass(tray, 'bore');
  shop.pass(tray, 'bore');
  shop.later(2 * 24 * 60);
  shop.by('edda');
  shop.pass(tray, 'bore');
  shop.load(tray, 'glue', { pieces: 2 });
  shop.act({ kind: 'end-spell', stage: stage.glue });
  shop.pace(15.01 * 60_000);
  shop.pass(tray, 'bore');
  shop.pace(null);
  shop.pass(tray, 'bore');
  shop.later(24 * 60);
  shop.pace(90_000);
  shop.pass(tray, 'bore');
  return studied(shop.log);
}

describe('worked time', () => {
  test('is added up by day and stage without breaks, loading and the rest of a spell with it', () => {
    expect(workedByDay(fourDays())).toEqual([
      { day: '2026-02-28', stage: 'bore', minutes: 12 },
      { day: '2026-03-02', stage: 'bore', minutes: 6 },
      { day: '2026-03-02', stage: 'glue', minutes: 12 },
      { day: '2026-03-03', stage: 'bore', minutes: 1.5 },
    ]);
    const ofEdda = workedByDay(fourDays(), { person: person.edda, to: '2026-03-02' as ShopDay });
    expect(ofEdda.map(({ minutes }) => minutes)).toEqual([6, 12]);
  });

  test('is added up by the weeks that begin on Mondays', () => {
    expect(workedByWeek(workedByDay(fourDays()))).toEqual([
      { day: '2026-02-23', stage: 'bore', minutes: 12 },
      { day: '2026-03-02', stage: 'bore', minutes: 7.5 },
      { day: '2026-03-02', stage: 'glue', minutes: 12 },
    ]);
  });

  test.each([
    ['2026-03-02', '2026-03-02'],
    ['2026-03-08', '2026-03-02'],
    ['2026-03-09', '2026-03-09'],
    ['1970-01-01', '1969-12-29'],
    ['1969-12-28', '1969-12-22'],
    ['2026-99-99', '2026-99-99'],
  ])('the week of %s begins on %s', (day, monday) => {
    expect(mondayOf(day as ShopDay)).toBe(monday);
  });

  test('is that of the day sheets', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const log = play(steps).log.map(paced);
        const wanted = [...shopOf(log).days].flatMap(([day, sheet]) =>
          [...sheet.worked].map(([at, ms]) => `${day} ${at} ${ms}`),
        );
        const found = workedByDay(studied(log)).map(
          ({ day, stage: at, minutes }) => `${day} ${at} ${Math.round(minutes * 60_000)}`,
        );
        expect(found).toEqual(wanted.sort());
      }),
      { numRuns: 30 },
    );
  });
});

describe('time that went into scrapped pieces', () => {
  const pieceMinutes: PieceMinutes = (at) => ({ bore: 1, glue: 2, turn: 4 })[at as string];

  test('is that of the stages up to the scrap, beside the time of all visits', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 5);
    for (const name of ['bore', 'glue'] as const) shop.pass(tray, name, { pieces: 5 });
    shop.pass(tray, 'turn', { pieces: 3 });
    shop.flaw(tray, 'turn', { why: 'catch', outcome: scrapped() });
    shop.flaw(tray, 'turn', { why: 'gap', outcome: { kind: 'mended' } });
    // Of no known time: neither here nor there.
    shop.flaw(tray, 'sand', { why: 'scratch', outcome: scrapped() });
    const table = studied(shop.log);
    const [two, all] = [7 + 7, 5 * (1 + 2 + 4)];
    expect(scrappedTime(table, { routes, pieceMinutes })).toEqual({ scrapped: two, all, share: two / all });
    const unknown = scrappedTime(table, { routes, pieceMinutes: () => undefined });
    expect(unknown).toEqual({ scrapped: 0, all: 0, share: undefined });
  });
});
