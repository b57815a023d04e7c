import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { dustMinutes } from '../../../src/domain/study/dust-minutes.ts';
import { workedByDay } from '../../../src/domain/study/worked-time.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { histories, historiesWithout, play } from '../../support/histories.ts';
import { paced, studied, studiedPacked } from '../../support/study-makers.ts';
import { person, stage } from '../../support/workshop.ts';

const everywhere = { stages: Object.values(stage) };
const sum = (rows: readonly { minutes: number }[]) => rows.reduce((total, { minutes }) => total + minutes, 0);
const dusty = { stages: [stage.bore, stage.turn] };

function aDustyDay() {
  const shop = aWorkshop();
  const ash = shop.tray('ash-copper', 20);
  const plum = shop.tray('plum-copper', 20);
  shop.pace(4 * 60_000);
  shop.by('edda');
  shop.pass(ash, 'bore');
  shop.pass(ash, 'bore');
  shop.by('odo');
  shop.pass(plum, 'bore');
  shop.act({ kind: 'end-spell', stage: stage.bore });
  shop.load(ash, 'glue', { pieces: 1 });
  shop.pace(15.01 * 60_000);
  shop.pass(ash, 'bore');
  return shop;
}

describe('minutes of dust', () => {
  test('are added up by day and wood without breaks, and the rest of a spell goes to the wood of its last tap', () => {
    expect(dustMinutes(studied(aDustyDay().log), dusty)).toEqual([
      { day: '2026-03-02', species: 'ash', minutes: 8 },
      { day: '2026-03-02', species: 'plum', minutes: 8 },
    ]);
  });

  test('are those of one person where one is asked for', () => {
    const table = studied(aDustyDay().log);
    expect(dustMinutes(table, { ...dusty, person: person.edda })).toEqual([
      { day: '2026-03-02', species: 'ash', minutes: 8 },
    ]);
    expect(dustMinutes(table, { ...dusty, person: null })).toEqual([]);
  });

  test('are none where no stage makes dust, and a tap that was taken back does not count', () => {
    const shop = aDustyDay();
    expect(dustMinutes(studied(shop.log), { stages: [] })).toEqual([]);
    shop.later(24 * 60);
    shop.pace(60_000);
    const slip = shop.pass(shop.tray('ash-copper', 3), 'bore');
    expect(dustMinutes(studied(shop.log), dusty)).toHaveLength(3);
    shop.undo(slip);
    expect(dustMinutes(studied(shop.log), dusty)).toHaveLength(2);
  });

  test('are the same in whatever order the events come and however they are packed', () => {
    fc.assert(
      fc.property(histories, (history) => {
        const log = play(history).log.map(paced);
        const found = dustMinutes(studied(log), everywhere);
        expect(dustMinutes(studied(log.toReversed()), everywhere)).toEqual(found);
        expect(dustMinutes(studiedPacked(log), everywhere)).toEqual(found);
      }),
      { numRuns: 30 },
    );
  });

  test('are all of the worked time of their stages, but for spells whose only tap was taken back', () => {
    fc.assert(
      fc.property(historiesWithout('spell'), (history) => {
        const table = studied(play(history).log.map(paced));
        expect(sum(dustMinutes(table, everywhere))).toBeCloseTo(sum(workedByDay(table)), 6);
      }),
      { numRuns: 30 },
    );
  });
});
