import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ShopEvent, TrayFacts } from '../../../src/domain/log/event.ts';
import type { TrayId } from '../../../src/domain/log/ids.ts';
import { atStage, type Place } from '../../../src/domain/log/place.ts';
import { addTo, type Counter } from '../../../src/domain/shop/counter.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { isVoided } from '../../../src/domain/shop/voids.ts';
import { allPlaces } from '../../support/all-places.ts';
import { histories, historiesWithout, play } from '../../support/histories.ts';
import { routeStages, setUpFacts } from '../../support/workshop.ts';

const runs = { numRuns: 300 };

/** What each tray is, from any event about it: a tray whose making was taken back still has pieces somewhere. */
function kindsOfTrays(log: readonly ShopEvent[]): ReadonlyMap<TrayId, TrayFacts> {
  const known = log.flatMap((event) =>
    'of' in event ? [event.of, ...('into' in event ? [event.into] : [])] : [],
  );
  return new Map(known.map((of) => [of.tray, of]));
}

/** All standings with what their tray is. */
function standingsOf(shop: Shop, log: readonly ShopEvent[]) {
  const kinds = kindsOfTrays(log);
  return [...allPlaces(shop)].flatMap(([tray, places]) => {
    const of = kinds.get(tray);
    if (!of) throw new Error(`nothing tells of ${tray}`);
    return [...places.values()].map(({ place, pieces }) => ({ of, place, pieces }));
  });
}

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

const order: readonly string[] = routeStages;

/** What a piece at a place holds, part by part, by the bill and the route of the test workshop. */
function holding({ variant }: TrayFacts, place: Place | null): ReadonlyMap<string, number> {
  const set = setUpFacts.find((each) => each.register === 'variant' && each.id === variant);
  if (!place || set?.register !== 'variant') return new Map();
  const reached = 'stage' in place ? order.indexOf(place.stage) : routeStages.length;
  const lines = set.value.bill.filter((line) => order.indexOf(line.stage) < reached);
  return new Map(lines.map(({ part, each }) => [part, each]));
}

describe('parts are conserved', () => {
  test('what the stores lost is in the pieces, or was lost with scrap that did not save it', () => {
    fc.assert(
      // The bill stays as it is, and no piece changes its place but by the work itself.
      fc.property(historiesWithout('reroute', 'set'), (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const wanted: Counter = new Map();
        const hold = (of: TrayFacts, { place, by }: { place: Place | null; by: number }) => {
          for (const [part, each] of holding(of, place)) addTo(wanted, { key: part, by: -each * by });
        };
        for (const { of, place, pieces } of standingsOf(shop, log)) {
          if (place.at !== 'scrapped') hold(of, { place, by: pieces });
        }
        for (const event of log) {
          if (isVoided(shop.voids, event)) continue;
          // Found pieces bring their parts along, and lost ones take them away: the stores know of neither.
          if (event.kind === 'recounted') {
            for (const { from, to, pieces } of event.moves) {
              hold(event.of, { place: from, by: pieces });
              hold(event.of, { place: to, by: -pieces });
            }
          }
          if (event.kind === 'flawed' && event.outcome.kind === 'scrapped') {
            const { saved } = event.outcome;
            for (const { from, pieces } of event.moves) {
              for (const [part, each] of holding(event.of, from)) {
                if (!saved.some((id) => id === part)) addTo(wanted, { key: part, by: -each * pieces });
              }
            }
          }
        }
        expect(shop.partsUsed).toEqual(wanted);
      }),
      runs,
    );
  });
});
