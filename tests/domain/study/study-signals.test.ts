import { expect, test } from 'vitest';
import { seededRandom } from '../../../src/domain/chance/seeded-random.ts';
import { studySignals } from '../../../src/domain/study/study-signals.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { studied } from '../../support/study-makers.ts';

/** Forty trays of ten: none of the first twenty has a blown blank, each of the others has `blown`. */
function fortyTrays(blown: number) {
  const shop = aWorkshop();
  const trays = Array.from({ length: 40 }, (_, at) => {
    const tray = shop.tray('ash-copper', 10);
    const bad = at < 20 ? 0 : blown;
    if (bad > 0) shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped(), pieces: bad });
    shop.pass(tray, 'bore', { pieces: 10 - bad });
    return tray;
  });
  return { table: studied(shop.log), trays };
}

test('a rate that has changed is told with its series, from the tray where it began', () => {
  const { table, trays } = fortyTrays(2);
  const { signals, falseAlarm } = studySignals(table, { random: seededRandom(1) });
  expect(falseAlarm).toBe(0.05);
  expect(signals.map(({ series }) => series.of)).toEqual(
    expect.arrayContaining([{ kind: 'scrap' }, { kind: 'reason', reason: 'blown' }]),
  );
  const [first] = signals;
  expect(first).toMatchObject({
    direction: 'worse',
    before: { flawed: 0, pieces: 200 },
    after: { flawed: 40, pieces: 200 },
    series: { stage: 'bore', species: 'ash' },
  });
  expect(first?.series.trays[first.since]?.tray).toBe(trays[20]);
});

test('a shop in which nothing changes, and one whose signals were answered, have none', () => {
  expect(studySignals(fortyTrays(0).table, { random: seededRandom(1) }).signals).toEqual([]);
  const { table } = fortyTrays(2);
  const { signals } = studySignals(table, { random: seededRandom(1) });
  const answered = signals.map(({ series, since }) => ({
    ...{ stage: series.stage, species: series.species, of: series.of },
    since: series.trays[since]?.from ?? 0,
  }));
  expect(studySignals(table, { random: seededRandom(1), answered }).signals).toEqual([]);
});
