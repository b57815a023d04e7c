import fc from 'fast-check';
import { expect, test } from 'vitest';
import { atStage, type Place, placeKey } from '../../../src/domain/log/place.ts';
import { routeStages, stage } from '../../support/workshop.ts';

const stages = fc.constantFrom(...routeStages.map((name) => stage[name]));
const grade = fc.constantFrom('first' as const, 'second' as const);
const redo = fc.option(stages);
const place: fc.Arbitrary<Place> = fc.oneof(
  fc.record({ at: fc.constant('waiting' as const), stage: stages, grade, redo }),
  fc.record({ at: fc.constant('held' as const), stage: stages, grade, redo, ready: fc.nat({ max: 3 }) }),
  fc.record({ at: fc.constant('finished' as const), grade }),
  fc.constant({ at: 'scrapped' as const }),
);

test('two places have the same key exactly when they are the same place', () => {
  fc.assert(
    fc.property(place, place, (a, b) => {
      expect(placeKey(a) === placeKey(b)).toBe(JSON.stringify(sorted(a)) === JSON.stringify(sorted(b)));
      expect(placeKey({ ...a })).toBe(placeKey(a));
    }),
    { numRuns: 1000 },
  );
});

test('finished and scrapped pieces are at no stage', () => {
  fc.assert(
    fc.property(place, (each) => {
      expect(atStage(each)).toBe('stage' in each);
    }),
  );
});

function sorted(each: Place): [string, unknown][] {
  return Object.entries(each).sort(([a], [b]) => (a < b ? -1 : 1));
}
