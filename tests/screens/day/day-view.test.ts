import { expect, test } from 'vitest';
import { dayReport } from '../../../src/domain/rollup/day-report.ts';
import { dayLines, inMinutes, stagesInOrder } from '../../../src/screens/day/day-view.ts';
import { aWorkshop, lowered, scrapped } from '../../support/a-shop.ts';
import { cureMinutes } from '../../support/workshop.ts';

const day = 24 * 60;

/** Monday: eight bored. Tuesday: glued pieces taken out, two turned, one lowered, one scrapped; five minutes each. */
function twoDays() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 8);
  shop.pass(tray, 'bore', { pieces: 8 });
  shop.load(tray, 'glue', { pieces: 8 });
  shop.later(Math.max(day, cureMinutes));
  shop.pass(tray, 'glue', { pieces: 8, held: true });
  shop.pace(5 * 60_000);
  shop.pass(tray, 'turn', { pieces: 2 });
  shop.flaw(tray, 'turn', { why: 'catch', outcome: lowered });
  shop.flaw(tray, 'turn', { why: 'blown', outcome: scrapped() });
  const today = shop.log.at(-1)?.day;
  if (!today) throw new Error('the shop has a log');
  return { shop: shop.shop, report: dayReport(shop.shop, today) };
}

test('the day in figures stands beside the day before and the average of the earlier days', () => {
  const { report } = twoDays();
  expect(Object.fromEntries(dayLines(report))).toEqual({
    firsts: { day: 0, before: 0, average: 0 },
    secondsFinished: { day: 0, before: 0, average: 0 },
    scrapped: { day: 1, before: 0, average: 0 },
    seconds: { day: 1, before: 0, average: 0 },
    made: { day: 0, before: 8, average: 8 },
    minutes: { day: 15, before: 0, average: 0 },
  });
});

test('stages stand in the order of the route, those of earlier days among them', () => {
  const { shop, report } = twoDays();
  expect(stagesInOrder(shop, report).map(({ stage }) => `${stage}`)).toEqual(['bore', 'glue', 'turn']);
});

test('an average that is not yet known stays unknown in minutes', () => {
  expect(inMinutes({ day: 90_000, before: 0, average: null })).toEqual({ day: 2, before: 0, average: null });
});
