import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Grade } from '../../../src/domain/log/place.ts';
import { shelfPlaces } from '../../../src/domain/log/shelf-facts.ts';
import { shelfRow } from '../../../src/domain/rollup/shelf-stock.ts';
import { shopOf } from '../../../src/domain/shop/shop.ts';
import { isVoided } from '../../../src/domain/shop/voids.ts';
import { histories, play, type Step } from '../../support/histories.ts';
import { standingsOf } from '../../support/standings.ts';
import { variant } from '../../support/workshop.ts';

/** The nine pieces that each history begins with go the whole way first, so that some are on the shelf. */
const finished: readonly Step[] = Array(8).fill({ act: 'pass', tablet: 0, a: 0, b: 8, c: 1 });
const workings = histories.map((steps) => [...finished, ...steps]);
const grades: readonly Grade[] = ['first', 'second'];

test('on the shelf = finished − listed − sold − given − kept, whatever was undone and whoever met', () => {
  fc.assert(
    fc.property(workings, (steps) => {
      const { log } = play(steps);
      const shop = shopOf(log);
      const moves = log.filter((event) => event.kind === 'shelf-moved' && !isVoided(shop.voids, event));
      const standings = standingsOf(shop, log);
      for (const id of Object.values(variant)) {
        for (const grade of grades) {
          const { finished: told, at } = shelfRow(shop, { variant: id, grade });
          const pieces = standings
            .filter(({ of, place }) => of.variant === id && place.at === 'finished' && place.grade === grade)
            .reduce((sum, standing) => sum + standing.pieces, 0);
          expect(told).toBe(pieces);
          expect(shelfPlaces.reduce((sum, place) => sum + at[place], 0)).toBe(pieces);
          for (const place of shelfPlaces) {
            const came = moves.reduce((sum, event) => {
              if (event.kind !== 'shelf-moved' || event.variant !== id || event.grade !== grade) return sum;
              return (
                sum + (event.to === place ? event.pieces : 0) - (event.from === place ? event.pieces : 0)
              );
            }, 0);
            expect(at[place]).toBe(came + (place === 'shelf' ? pieces : 0));
          }
        }
      }
    }),
    { numRuns: 200 },
  );
});

test('and such histories finish pieces, and move them', () => {
  const seen = { finished: 0, moved: 0 };
  for (const steps of fc.sample(workings, { numRuns: 100, seed: 7 })) {
    const shop = shopOf(play(steps).log);
    if (shop.ledger.finished.size > 0) seen.finished += 1;
    if (shop.shelf.moved.size > 0) seen.moved += 1;
  }
  expect(seen.finished).toBeGreaterThan(50);
  expect(seen.moved).toBeGreaterThan(20);
});
