import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ShopEvent, TrayFacts } from '../../../src/domain/log/event.ts';
import type { PartId } from '../../../src/domain/log/ids.ts';
import type { Place } from '../../../src/domain/log/place.ts';
import { partsOnHand, partsToClean } from '../../../src/domain/rollup/parts-on-hand.ts';
import { addTo, type Counter } from '../../../src/domain/shop/counter.ts';
import { type Shop, shopOf } from '../../../src/domain/shop/shop.ts';
import { isVoided } from '../../../src/domain/shop/voids.ts';
import { historiesWithout, play, type Step } from '../../support/histories.ts';
import { standingsOf } from '../../support/standings.ts';
import { part, routeStages, setUpFacts } from '../../support/workshop.ts';

const order: readonly string[] = routeStages;

/** What a piece at a place holds, part by part, by the bill and the route of the test workshop. */
function holding({ variant }: TrayFacts, place: Place | null): readonly (readonly [PartId, number])[] {
  const set = setUpFacts.find((each) => each.register === 'variant' && each.id === variant);
  if (!place || set?.register !== 'variant') return [];
  const reached = 'stage' in place ? order.indexOf(place.stage) : routeStages.length;
  return set.value.bill
    .filter((line) => order.indexOf(line.stage) < reached)
    .map((line) => [line.part, line.each]);
}

/** Parts that came from outside: deliveries, what counts found or missed, and what found and lost pieces had in them. */
function cameIn(inForce: readonly ShopEvent[]): Counter<PartId> {
  const parts: Counter<PartId> = new Map();
  for (const event of inForce) {
    if (event.kind === 'parts-received')
      for (const line of event.parts) addTo(parts, { key: line.part, by: line.pieces });
    if (event.kind === 'parts-counted') addTo(parts, { key: event.part, by: event.pieces });
    if (event.kind !== 'recounted') continue;
    for (const { from, to, pieces } of event.moves) {
      for (const [key, each] of holding(event.of, from)) addTo(parts, { key, by: -each * pieces });
      for (const [key, each] of holding(event.of, to)) addTo(parts, { key, by: each * pieces });
    }
  }
  return parts;
}

/** Parts that are gone for good: with scrap that did not save them, and over the cleaning. */
function lost(inForce: readonly ShopEvent[]): Counter<PartId> {
  const parts: Counter<PartId> = new Map();
  for (const event of inForce) {
    if (event.kind === 'parts-cleaned') addTo(parts, { key: event.part, by: event.lost });
    if (event.kind !== 'flawed' || event.outcome.kind !== 'scrapped') continue;
    const { saved } = event.outcome;
    for (const { from, pieces } of event.moves)
      for (const [key, each] of holding(event.of, from))
        if (!saved.includes(key)) addTo(parts, { key, by: each * pieces });
  }
  return parts;
}

/** Parts in pieces that are in work or finished. */
function inPieces(shop: Shop, log: readonly ShopEvent[]): Counter<PartId> {
  const parts: Counter<PartId> = new Map();
  for (const { of, place, pieces } of standingsOf(shop, log))
    if (place.at !== 'scrapped')
      for (const [key, each] of holding(of, place)) addTo(parts, { key, by: each * pieces });
  return parts;
}

/** The nine pieces that each history begins with are bored and glued up first: what is scrapped has cores to be saved. */
const gluedUp: readonly Step[] = Array(2).fill({ act: 'pass', tablet: 0, a: 0, b: 8, c: 1 });
// The bill stays as it is, and no piece changes its place but by the work itself.
const workings = historiesWithout('reroute', 'set').map((steps) => [...gluedUp, ...steps]);

describe('parts are conserved', () => {
  test('received + counted = on the shelf + to be cleaned + in pieces + lost, whatever was undone and whoever met', () => {
    fc.assert(
      fc.property(workings, (steps) => {
        const { log } = play(steps);
        const shop = shopOf(log);
        const inForce = log.filter((event) => !isVoided(shop.voids, event));
        const balance = cameIn(inForce);
        for (const gone of [lost(inForce), inPieces(shop, log)])
          for (const [key, pieces] of gone) addTo(balance, { key, by: -pieces });
        for (const key of Object.values(part))
          addTo(balance, { key, by: -partsOnHand(shop, key) - partsToClean(shop, key) });
        expect(balance).toEqual(new Map());
      }),
      { numRuns: 500 },
    );
  });

  test('and such histories have parts to be cleaned, cleaned ones, lost ones and corrections', () => {
    const seen = new Map<string, number>();
    for (const steps of fc.sample(workings, { numRuns: 200, seed: 7 })) {
      const { stores } = shopOf(play(steps).log);
      const sums = new Set([...stores.keys()].map((key) => key.slice(0, key.indexOf('|'))));
      for (const sum of sums) seen.set(sum, (seen.get(sum) ?? 0) + 1);
    }
    for (const sum of ['received', 'paid', 'corrected', 'saved', 'saved-corrected', 'cleaned', 'lost'])
      expect(seen.get(sum) ?? 0, sum).toBeGreaterThan(10);
  });
});
