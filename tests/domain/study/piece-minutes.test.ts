import { expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { pieceMinutes } from '../../../src/domain/study/piece-minutes.ts';
import { pieceTimes } from '../../../src/domain/study/piece-times.ts';
import { stageGaps } from '../../../src/domain/study/stage-gaps.ts';
import { aWorkshop, type TestShop } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { species, stage } from '../../support/workshop.ts';
import { tapsOf } from '../statistics/tap-makers.ts';

const minutesIn = (shop: TestShop) => pieceMinutes(stageGaps(studied(shop.log)));
const ofAsh = (shop: TestShop) => minutesIn(shop)(stage.bore, species.ash);
const ms = (minutes: number | undefined) => (minutes === undefined ? null : Math.round(minutes * 60_000));

type Taps = readonly { readonly minutes: number | undefined; readonly pieces: number }[];

/** Taps at the boring of one tray. */
function tapped(taps: Taps) {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 999);
  for (const { minutes, pieces } of taps) {
    shop.pace(ms(minutes));
    shop.pass(ash, 'bore', { pieces });
  }
  return { shop, ash };
}
const steady = (minutes: number, taps = 20): Taps =>
  Array.from({ length: taps }, () => ({ minutes, pieces: 1 }));

test('minutes per piece are those of the work, whatever was tapped at once or stood still', () => {
  const taps = tapsOf(
    { mean: 4, cv: 0.3, bulk: 'one-tap', pause: [20, 60] },
    { taps: 300, random: seededRandom(5) },
  );
  expect(ofAsh(tapped(taps).shop) ?? 0).toBeGreaterThan(3.8);
  expect(ofAsh(tapped(taps).shop) ?? 0).toBeLessThan(4.2);
});

test('they are the mean that the list of times has, too', () => {
  const { shop } = tapped(steady(3));
  const [time] = pieceTimes(studied(shop.log), {});
  expect(time).toMatchObject({ stage: 'bore', species: 'ash', of: 'work' });
  expect(time?.time.mean).toBeCloseTo(3, 1);
  expect(ofAsh(shop)).toBe(time?.time.mean);
});

test('a wood without a time at a stage has that of the others, and a stage without one has none', () => {
  const { shop } = tapped(steady(3));
  const plum = shop.tray('plum-copper', 40);
  shop.pace(ms(6));
  for (let tap = 0; tap < 20; tap += 1) shop.pass(plum, 'bore');
  const at = minutesIn(shop);
  expect(at(stage.bore, species.plum)).toBeCloseTo(6, 1);
  expect(at(stage.bore, species.olive)).toBeCloseTo(4.5, 1);
  expect(at(stage.turn, species.ash)).toBeUndefined();
  expect(ofAsh(tapped([{ minutes: undefined, pieces: 3 }]).shop)).toBeUndefined();
});

test('the loading of a cure is added to the taking out', () => {
  const { shop, ash } = tapped(steady(1, 40));
  shop.pace(ms(2));
  for (let tap = 0; tap < 4; tap += 1) shop.load(ash, 'glue');
  expect(minutesIn(shop)(stage.glue, species.ash)).toBeCloseTo(2, 1);
  shop.pace(ms(0.5));
  for (let tap = 0; tap < 4; tap += 1) shop.pass(ash, 'glue', { held: true });
  expect(minutesIn(shop)(stage.glue, species.ash)).toBeCloseTo(2.5, 1);
});
