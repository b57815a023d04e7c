import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { atStage } from '../../../src/domain/log/place.ts';
import { addTo, type Counter } from '../../../src/domain/shop/counter.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { histories, play } from '../../support/histories.ts';
import { standingsOf } from '../../support/standings.ts';

const runs = { numRuns: 300 };

describe('pieces are conserved', () => {
  test('made + corrected = in process + finished + scrapped, for each wood and variant', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const { made, corrected, finished, scrapped } = shop.ledger;
        const balance: Counter = new Map();
        for (const [key, pieces] of [...made, ...corrected]) addTo(balance, { key, by: pieces });
        for (const [key, pieces] of finished)
          addTo(balance, { key: key.replace(/\|[^|]*$/, ''), by: -pieces });
        for (const [key, pieces] of scrapped) addTo(balance, { key, by: -pieces });
        for (const { of, place, pieces } of standingsOf(shop, log)) {
          if (atStage(place)) addTo(balance, { key: `${of.species}|${of.variant}`, by: -pieces });
        }
        expect(balance).toEqual(new Map());
      }),
      runs,
    );
  });

  test('and the ledger has at every stage, grade, clamp and end what the positions of the trays add up to', () => {
    fc.assert(
      fc.property(histories, (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const wip: Counter = new Map();
        const finished: Counter = new Map();
        const scrapped: Counter = new Map();
        for (const { of, place, pieces: by } of standingsOf(shop, log)) {
          const { species, variant } = of;
          if (atStage(place)) addTo(wip, { key: `${place.stage}|${species}|${place.grade}|${place.at}`, by });
          else if (place.at === 'finished')
            addTo(finished, { key: `${species}|${variant}|${place.grade}`, by });
          else addTo(scrapped, { key: `${species}|${variant}`, by });
        }
        expect(shop.ledger).toMatchObject({ wip, finished, scrapped });
        expect([shop.ledger.wip.size, shop.ledger.finished.size]).toEqual([wip.size, finished.size]);
      }),
      runs,
    );
  });
});
