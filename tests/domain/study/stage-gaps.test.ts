import { describe, expect, test } from 'vitest';
import { stageGaps } from '../../../src/domain/study/stage-gaps.ts';
import { aWorkshop } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';
import { stage } from '../../support/workshop.ts';

const minutes = (each: number) => each * 60_000;

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
