import { describe, expect, test } from 'vitest';
import type { OutcomeKind } from '../../../src/domain/log/event.ts';
import { flawTable, likeliestOutcomes } from '../../../src/domain/rollup/flaw-table.ts';
import { aWorkshop, backTo, lowered, mended, scrapped } from '../../support/a-shop.ts';
import { reason, stage } from '../../support/workshop.ts';

const usual: readonly OutcomeKind[] = ['mended', 'sent-back', 'second', 'scrapped'];

describe('the flaw table', () => {
  test('has a piece with two reasons under both, and with one reason named twice once', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.flaw(tray, 'bore', { why: ['catch', 'tear-out'], outcome: mended, pieces: 2 });
    shop.flaw(tray, 'bore', { why: ['catch', 'catch'], outcome: mended });
    const rows = flawTable(shop.shop).map((cell) => Object.values(cell).join(' '));
    expect(rows.toSorted()).toEqual(['bore ash catch mended 3', 'bore ash tear-out mended 2']);
    expect(shop.shop.flaws.byOutcome.get('bore|ash|mended' as never)).toBe(3);
  });

  test('keeps flaws by tray and by person, and has those of nobody under nobody', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.by('edda');
    shop.flaw(tray, 'bore', { why: 'catch', outcome: mended, pieces: 2 });
    shop.by(null);
    shop.flaw(tray, 'bore', { why: 'catch', outcome: lowered });
    expect(Object.fromEntries(shop.shop.flaws.byPerson)).toEqual({
      'edda|bore|ash|catch': 2,
      '|bore|ash|catch': 1,
    });
    expect(Object.fromEntries(shop.shop.flaws.byTray)).toEqual({ [`${tray}|catch`]: 3 });
  });

  test('is empty again when the flaws are taken back', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 6);
    shop.undo(shop.flaw(tray, 'bore', { why: ['catch', 'gap'], outcome: mended, pieces: 2 }));
    expect(flawTable(shop.shop)).toEqual([]);
    expect(shop.shop.flaws.byPerson.size).toBe(0);
  });
});

describe('the likeliest outcomes of a reason', () => {
  const likeliest = (shop: ReturnType<typeof aWorkshop>, at: 'bore' | 'glue' = 'bore') =>
    likeliestOutcomes(shop.shop, { stage: stage[at], reason: reason.catch, usual });

  test('without history stand in the usual order', () => {
    expect(likeliest(aWorkshop())).toEqual(usual);
  });

  test('stand by how many pieces had them, over all woods; those never had keep the usual order', () => {
    const shop = aWorkshop();
    const ash = shop.tray('ash-copper', 9);
    const plum = shop.tray('plum-copper', 9);
    shop.flaw(ash, 'bore', { why: 'catch', outcome: lowered, pieces: 2 });
    shop.flaw(ash, 'bore', { why: 'catch', outcome: scrapped(), pieces: 3 });
    shop.flaw(plum, 'bore', { why: 'catch', outcome: lowered, pieces: 2 });
    expect(likeliest(shop)).toEqual(['second', 'scrapped', 'mended', 'sent-back']);
    expect(usual).toEqual(['mended', 'sent-back', 'second', 'scrapped']);
  });

  test('do not look at other stages or other reasons', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 9);
    shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped(), pieces: 5 });
    shop.pass(tray, 'bore', { pieces: 4 });
    shop.flaw(tray, 'glue', { why: 'catch', outcome: backTo('bore'), pieces: 3 });
    expect(likeliest(shop)).toEqual(usual);
    expect(likeliest(shop, 'glue')).toEqual(['sent-back', 'mended', 'second', 'scrapped']);
  });
});
