import { describe, expect, test } from 'vitest';
import { cases } from '../../../shared/check-values/yield.json' with { type: 'json' };
import type { SpeciesId } from '../../../src/domain/log/ids.ts';
import { firstPassYield } from '../../../src/domain/rollup/first-pass-yield.ts';
import { flawTable } from '../../../src/domain/rollup/flaw-table.ts';
import { yieldBySpecies } from '../../../src/domain/rollup/species-yield.ts';
import type { Shop } from '../../../src/domain/shop/shop.ts';
import { aWorkshop, backTo, mended, scrapped } from '../../support/a-shop.ts';
import { routeStages, type StageName, species, stage } from '../../support/workshop.ts';

const stages = routeStages.map((name) => stage[name]);

function yieldOf(shop: Shop, wood: SpeciesId) {
  const found = yieldBySpecies(shop, stages).find((each) => each.species === wood);
  if (!found) throw new Error(`no pieces of ${wood}`);
  return found;
}

function shareAt(shop: Shop, name: StageName) {
  return yieldOf(shop, species.ash).stages.find((each) => each.stage === stage[name])?.share;
}

describe('published yields come out of a log that has exactly these flaws', () => {
  test('stages of 0.98, 0.95, 0.90 and 0.99 roll to 0.829521', () => {
    const { inputs, expected, tolerance } = cases['yield-rty-vs-fpy'];
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 100);
    for (const [index, fpy] of inputs.fpy.entries()) {
      const name = routeStages[index] ?? 'bore';
      const good = Math.round(100 * fpy);
      shop.pass(tray, name, { pieces: good });
      shop.flaw(tray, name, { why: 'scratch', outcome: mended, pieces: 100 - good });
    }
    const found = yieldOf(shop.shop, species.ash);
    expect(found.stages.map(({ share }) => share)).toEqual([
      { of: 100, out: 98 },
      { of: 100, out: 95 },
      { of: 100, out: 90 },
      { of: 100, out: 99 },
    ]);
    expect(Math.abs((found.rolled ?? 0) - expected.RTY)).toBeLessThanOrEqual(tolerance);
  });

  test('of 120 inspected, 102 good at first, 8 scrapped and 10 to be reworked: the ratios of ISO 22400-2', () => {
    const { inputs, expected, tolerance } = cases['yield-iso22400-defs'];
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', inputs.inspected);
    shop.pass(tray, 'bore', { pieces: inputs.inspected });
    shop.pass(tray, 'glue', { pieces: inputs.good_first_time });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: scrapped(), pieces: inputs.SQ });
    shop.flaw(tray, 'glue', { why: 'gap', outcome: backTo('bore'), pieces: inputs.RQ });

    const of = shareAt(shop.shop, 'glue') ?? { of: 0, out: 0 };
    const pieces = (outcome: string) => flawTable(shop.shop).find((cell) => cell.outcome === outcome)?.pieces;
    const near = (found: number, value: number) =>
      expect(Math.abs(found - value)).toBeLessThanOrEqual(tolerance);
    near(firstPassYield({ good: of.out, judged: of.of }) ?? 0, expected.first_pass_yield);
    near((pieces('scrapped') ?? 0) / of.of, expected.scrap_ratio);
    near((pieces('sent-back') ?? 0) / of.of, expected.rework_ratio);

    // The reworked come again and pass: the first-pass yield does not move.
    shop.pass(tray, 'bore', { pieces: inputs.RQ });
    shop.pass(tray, 'glue', { pieces: inputs.RQ });
    expect(shareAt(shop.shop, 'glue')).toEqual(of);
    expect(yieldOf(shop.shop, species.ash).stages.map(({ repeats }) => repeats)).toEqual([10, 10]);
  });
});

describe('the yield of a wood', () => {
  test('rolls only over the stages that have judged a piece of it', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    expect(yieldOf(shop.shop, species.ash)).toMatchObject({ stages: [], rolled: null, inFlight: 4 });
    shop.pass(tray, 'bore', { pieces: 3 });
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
    expect(yieldOf(shop.shop, species.ash)).toMatchObject({
      rolled: 0.75,
      inFlight: 3,
      scrapped: 1,
    });
  });

  test('adds up its variants and leaves other woods out', () => {
    const shop = aWorkshop();
    shop.tray('ash-copper', 4);
    shop.tray('ash-nickel', 5);
    shop.tray('plum-copper', 6);
    expect(yieldOf(shop.shop, species.ash).made).toBe(9);
    expect(yieldOf(shop.shop, species.plum).made).toBe(6);
    expect(yieldBySpecies(shop.shop, stages)).toHaveLength(2);
  });

  test('shows the stages in the order of the route', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 1);
    for (const name of routeStages) shop.pass(tray, name);
    expect(yieldOf(shop.shop, species.ash).stages.map((each) => each.stage)).toEqual(stages);
  });

  test('a found piece is no made piece, and stands apart as a correction', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    shop.recount(tray, 'bore', { counted: 6, why: 'found' });
    expect(yieldOf(shop.shop, species.ash)).toMatchObject({ made: 4, corrected: 2, inFlight: 6 });
    shop.recount(tray, 'bore', { counted: 3, why: 'lost' });
    expect(yieldOf(shop.shop, species.ash)).toMatchObject({ made: 4, corrected: -1, inFlight: 3 });
  });

  test('a piece that was passed by mistake and taken back was never judged', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 4);
    shop.undo(shop.pass(tray, 'bore'));
    expect(yieldOf(shop.shop, species.ash)).toMatchObject({ stages: [], rolled: null, inFlight: 4 });
  });
});
