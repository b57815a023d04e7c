import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { flawPareto } from '../../../src/domain/study/flaw-pareto.ts';
import type { PieceMinutes } from '../../../src/domain/study/piece-minutes.ts';
import { aWorkshop, backTo, lowered, mended, scrapped } from '../../support/a-shop.ts';
import { histories, play } from '../../support/histories.ts';
import { testRoutes as routes, studied } from '../../support/study-makers.ts';
import { batch } from '../../support/workshop.ts';

/** Bore 1, glue 2, turn 4, sand 8 minutes; twice as long in plum; the grading has no known time. */
const pieceMinutes: PieceMinutes = (stage, species) => {
  const minutes = new Map([
    ['bore', 1],
    ['glue', 2],
    ['turn', 4],
    ['sand', 8],
  ]).get(stage);
  return minutes === undefined ? undefined : minutes * (species === 'plum' ? 2 : 1);
};

/**
 * Eight of ash: a catch scraps 2 at the turning (1 + 2 + 4 minutes each); a gap there sends 1 back to the glue (2 + 4),
 * and lowers 1; the grading scraps 1 for a scratch and a gap (15 and an unknown time), mends 1. Of plum, a batch that is
 * only turned and sanded: 1 is blown at the turning (8).
 */
function flawedShop() {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 8);
  for (const name of ['bore', 'glue'] as const) shop.pass(ash, name, { pieces: 8 });
  shop.flaw(ash, 'turn', { why: 'catch', outcome: scrapped(), pieces: 2 });
  shop.flaw(ash, 'turn', { why: 'gap', outcome: backTo('glue') });
  shop.flaw(ash, 'turn', { why: 'gap', outcome: lowered });
  for (const name of ['turn', 'sand'] as const) shop.pass(ash, name, { pieces: 4 });
  shop.flaw(ash, 'grade', { why: ['scratch', 'gap'], outcome: scrapped() });
  shop.flaw(ash, 'grade', { why: 'scratch', outcome: mended });
  const plum = shop.tray('plum-copper', 1, 'autumn');
  shop.flaw(plum, 'turn', { why: 'blown', outcome: scrapped() });
  return studied(shop.log);
}

describe('flaws by reason', () => {
  test('have the pieces of each, the most first, and the minutes that had gone into them or are needed again', () => {
    const outcomes = { mended: 0, 'sent-back': 0, second: 0, scrapped: 0 };
    expect(flawPareto(flawedShop(), { routes, pieceMinutes })).toEqual({
      reasons: [
        {
          ...{ reason: 'gap', pieces: 3 },
          byOutcome: { ...outcomes, 'sent-back': 1, second: 1, scrapped: 1 },
          minutes: { scrapped: 15, again: 6, partly: 1 },
        },
        {
          ...{ reason: 'scratch', pieces: 2 },
          byOutcome: { ...outcomes, mended: 1, scrapped: 1 },
          minutes: { scrapped: 15, again: 0, partly: 1 },
        },
        {
          ...{ reason: 'catch', pieces: 2 },
          byOutcome: { ...outcomes, scrapped: 2 },
          minutes: { scrapped: 14, again: 0, partly: 0 },
        },
        {
          ...{ reason: 'blown', pieces: 1 },
          byOutcome: { ...outcomes, scrapped: 1 },
          minutes: { scrapped: 8, again: 0, partly: 0 },
        },
      ],
      pieces: 7,
      minutes: { scrapped: 37, again: 6, partly: 1 },
    });
  });

  test('can be asked of one batch', () => {
    const { reasons, pieces } = flawPareto(flawedShop(), {
      ...{ routes, pieceMinutes, filter: { batch: batch.autumn } },
    });
    expect([reasons.map(({ reason }) => reason), pieces]).toEqual([['blown'], 1]);
  });

  test('are as many as the shop has counted', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const found = flawPareto(studied(log), { routes, pieceMinutes });
        const wanted = new Map<string, number>();
        for (const [key, by] of shopOf(log).flaws.byReason) {
          const [, , reason, outcome] = key.split('|');
          const name = `${reason} ${outcome}`;
          wanted.set(name, (wanted.get(name) ?? 0) + by);
        }
        const counted = found.reasons.flatMap(({ reason, byOutcome }) =>
          Object.entries(byOutcome).flatMap(([outcome, by]) =>
            by > 0 ? [[`${reason} ${outcome}`, by] as const] : [],
          ),
        );
        expect(new Map(counted)).toEqual(wanted);
        const sums = [...shopOf(log).flaws.byOutcome.values()];
        expect(found.pieces).toBe(sums.reduce((sum, by) => sum + by, 0));
      }),
      { numRuns: 40 },
    );
  });
});
