import { describe, expect, test } from 'vitest';
import { medianMinutes, stageGaps, unitTimes } from '../../../src/domain/study/piece-minutes.ts';
import { aWorkshop, type TestShop } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { species, stage } from '../../support/workshop.ts';

const minutes = (each: number) => each * 60_000;
const minutesIn = (shop: TestShop) => medianMinutes(stageGaps(studied(shop.log)));

describe('gaps between taps', () => {
  test('stand by stage and wood in the order of the work, with what is not known of them', () => {
    const shop = aWorkshop();
    const ash = shop.tray('ash-copper', 9);
    const plum = shop.tray('plum-copper', 9);
    shop.act({ kind: 'begin-spell', stage: stage.bore });
    shop.pace(minutes(3));
    shop.pass(ash, 'bore', { pieces: 2 });
    shop.pass(plum, 'bore');
    shop.pace(null);
    shop.pass(ash, 'bore', { pieces: 4 });
    shop.pace(minutes(1.5));
    shop.load(ash, 'glue', { pieces: 3 });
    shop.act({ kind: 'end-spell', stage: stage.glue });
    const gaps = stageGaps(studied(shop.log));
    expect(gaps).toEqual([
      {
        ...{ stage: 'bore', species: 'ash', of: 'work' },
        gaps: [
          { minutes: 3, pieces: 2, begins: true },
          { minutes: undefined, pieces: 4, begins: false },
        ],
      },
      { stage: 'bore', species: 'plum', of: 'work', gaps: [{ minutes: 3, pieces: 1, begins: false }] },
      { stage: 'glue', species: 'ash', of: 'loading', gaps: [{ minutes: 1.5, pieces: 3, begins: false }] },
    ]);
    const [newest] = stageGaps(studied(shop.log), { most: 1 });
    expect(newest?.gaps).toEqual([{ minutes: undefined, pieces: 4, begins: false }]);
  });
});

describe('median minutes per piece', () => {
  const tapped = (...taps: readonly (readonly [minutes: number | null, pieces: number])[]) => {
    const shop = aWorkshop();
    const ash = shop.tray('ash-copper', 99);
    for (const [each, pieces] of taps) {
      shop.pace(each === null ? null : minutes(each));
      shop.pass(ash, 'bore', { pieces });
    }
    return shop;
  };
  const ofAsh = (shop: TestShop) => minutesIn(shop)(stage.bore, species.ash);

  test('weigh each tap by its pieces', () => {
    expect(ofAsh(tapped([2, 1], [4, 1], [9, 1]))).toBe(4);
    expect(ofAsh(tapped([2, 1], [4, 1]))).toBe(3);
    expect(ofAsh(tapped([2, 1], [4, 1], [9, 9]))).toBe(1);
  });

  test('leave out breaks and what has no known time', () => {
    expect(ofAsh(tapped([null, 40], [3, 1], [15.01, 40], [5, 1]))).toBe(4);
    expect(ofAsh(tapped([15, 1]))).toBe(15);
  });

  test('put taps within two seconds together: a dozen of them after half a dozen minutes are twelve pieces', () => {
    expect(ofAsh(tapped([6, 1], [0.02, 1], [0.01, 1]))).toBe(2);
    // What follows on an unknown time is unknown too.
    expect(ofAsh(tapped([null, 1], [0.02, 1]))).toBeUndefined();
  });

  test('are those of all woods where a wood has none, and not known where there are none', () => {
    const at = minutesIn(tapped([2, 1], [4, 1], [9, 1]));
    expect(at(stage.bore, species.olive)).toBe(4);
    expect(at(stage.turn, species.ash)).toBeUndefined();
  });

  test('add the loading of a cure to the taking out', () => {
    const shop = tapped([1, 4]);
    const tray = [...shop.shop.trays.keys()][0];
    if (tray === undefined) throw new Error('there is a tray');
    shop.pace(minutes(4));
    shop.load(tray, 'glue', { pieces: 2 });
    expect(minutesIn(shop)(stage.glue, species.ash)).toBe(2);
    shop.pace(minutes(1));
    shop.pass(tray, 'glue', { pieces: 2, held: true });
    expect(minutesIn(shop)(stage.glue, species.ash)).toBe(2.5);
  });
});

test('times of piece after piece share what was made together, and leave a gap where a time is not known', () => {
  const gap = (minutes: number | undefined, pieces: number, begins = false) => ({ minutes, pieces, begins });
  expect(
    unitTimes([
      gap(4, 2, true),
      gap(6, 1),
      gap(0.01, 2),
      gap(0.01, 1, true),
      gap(undefined, 2),
      gap(16, 1),
      gap(0.01, 1, true),
      gap(1, 1),
    ]),
  ).toEqual([2, 2, 2, 2, 2, undefined, undefined, undefined, undefined, undefined, 1]);
});
