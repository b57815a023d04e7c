import { expect } from 'vitest';
import type { Maker } from './maker.ts';

/**
 * The table of the newcomer's story, made by hand on paper:
 *
 *            kit parts          cut and bore             glue up            glue cures
 * beech 20   19 of 20 clean     9 of 11 clean            5 of 5 clean       5 wait
 *            1 waits (back)     9 wait (4 + 3 + 2)       5 wait
 * plum 16    15 of 16 clean     4 of 5 clean             2 of 4 clean       3 wait
 *            0 wait             10 wait (3 + 1 + 6)      0 wait
 *
 * Recounts: plum -1. Scrapped: plum 2 (kit parts, cut and bore). Rolled throughput yield:
 * beech 19/20 × 9/11 × 5/5 = 0.77727, plum 15/16 × 4/5 × 2/4 = 0.375.
 */
export async function expectTable(hands: Maker): Promise<void> {
  const woods = await openYield(hands);
  await expectYield(hands, woods);
  await hands.goTo('#/day');
  await expectDay(hands, woods);
  await hands.at('no-checks').waitFor();
}

interface Woods {
  readonly b: string;
  readonly p: string;
}

async function openYield({ page, goTo, at }: Maker): Promise<Woods> {
  await goTo('#/yield');
  await at('flow').waitFor();
  await at('wip-as-table').locator('summary').click();
  const found = await page.locator('.yield-wood').evaluateAll((woods) =>
    woods.map((wood) => ({
      name: wood.getAttribute('aria-label') ?? '',
      id:
        wood
          .querySelector('[data-testid$="-made"]')
          ?.getAttribute('data-testid')
          ?.slice('yield-'.length, -'-made'.length) ?? '',
    })),
  );
  const idOf = (name: string) => found.find((wood) => wood.name === name)?.id ?? '';
  return { b: idOf('European beech'), p: idOf('Plum') };
}

async function expectYield({ expectFigures, figure }: Maker, { b, p }: Woods): Promise<void> {
  await expectFigures({
    [`yield-${b}-made`]: '20',
    [`yield-${b}-corrected`]: '0',
    [`yield-${b}-in-flight`]: '20',
    [`yield-${b}-firsts`]: '0',
    [`yield-${b}-seconds`]: '0',
    [`yield-${b}-scrapped`]: '0',
    [`yield-${p}-made`]: '16',
    [`yield-${p}-corrected`]: '−1',
    [`yield-${p}-in-flight`]: '13',
    [`yield-${p}-firsts`]: '0',
    [`yield-${p}-seconds`]: '0',
    [`yield-${p}-scrapped`]: '2',
    [`wip-kit-parts-${b}`]: '1',
    [`wip-cut-and-bore-${b}`]: '9',
    [`wip-glue-up-${b}`]: '5',
    [`wip-glue-cures-${b}`]: '5',
    [`wip-kit-parts-${p}`]: '0',
    [`wip-cut-and-bore-${p}`]: '10',
    [`wip-glue-up-${p}`]: '0',
    [`wip-glue-cures-${p}`]: '3',
    'wip-cut-and-bore-all': '19',
    [`fpy-${b}-kit-parts data-out`]: '19',
    [`fpy-${b}-kit-parts data-of`]: '20',
    [`fpy-${b}-cut-and-bore data-out`]: '9',
    [`fpy-${b}-cut-and-bore data-of`]: '11',
    [`fpy-${b}-glue-up data-out`]: '5',
    [`fpy-${b}-glue-up data-of`]: '5',
    [`fpy-${p}-kit-parts data-out`]: '15',
    [`fpy-${p}-kit-parts data-of`]: '16',
    [`fpy-${p}-cut-and-bore data-out`]: '4',
    [`fpy-${p}-cut-and-bore data-of`]: '5',
    [`fpy-${p}-glue-up data-out`]: '2',
    [`fpy-${p}-glue-up data-of`]: '4',
    [`flaw-part-faulty-${b}`]: '1',
    [`flaw-part-faulty-${p}`]: '1',
    [`flaw-crack-${b}`]: '1',
    [`flaw-crack-${p}`]: '1',
    [`flaw-off-centre-${b}`]: '1',
    [`flaw-off-centre-${p}`]: '0',
    [`flaw-glue-failed-${p}`]: '2',
    'flaw-part-faulty-all': '2',
  });
  expect(Number(await figure(`yield-${b}-rolled`, 'data-value'))).toBeCloseTo((19 / 20) * (9 / 11), 10);
  expect(Number(await figure(`yield-${p}-rolled`, 'data-value'))).toBeCloseTo(0.375, 10);
}

async function expectDay({ expectFigures }: Maker, { b, p }: Woods): Promise<void> {
  await expectFigures({
    'day-made data-day': '36',
    'day-firsts data-day': '0',
    'day-seconds-finished data-day': '0',
    'day-scrapped data-day': '2',
    'day-seconds data-day': '2',
    'day-scrapped data-before': '0',
    'day-scrapped data-average': '',
    'day-passed-kit-parts data-day': '34',
    'day-passed-cut-and-bore data-day': '13',
    'day-passed-glue-up data-day': '7',
    [`day-flaw-kit-parts-${b}-part-faulty-mended`]: '1',
    [`day-flaw-kit-parts-${p}-part-faulty-scrapped`]: '1',
    [`day-flaw-cut-and-bore-${b}-crack-second`]: '1',
    [`day-flaw-cut-and-bore-${b}-off-centre-sent-back`]: '1',
    [`day-flaw-cut-and-bore-${p}-crack-scrapped`]: '1',
    [`day-flaw-glue-up-${p}-glue-failed-sent-back`]: '1',
    [`day-flaw-glue-up-${p}-glue-failed-second`]: '1',
  });
}
