/**
 * How often the list of signals cries wolf, and how soon it finds what has changed: from taps to the list, as the app does
 * it, with a series for each stage × wood and for each stage over all its woods, of scrap and of every reason.
 */
import { type Random, seededRandom } from '../../src/domain/chance/seeded-random.ts';
import { studySignals } from '../../src/domain/study/study-signals.ts';
import { type CalibrationRow, calibrationRow, meanOf, quantileOf, type Simulation } from './row.ts';
import { simulatedBenches, visitsOf, woods } from './simulated-benches.ts';
import { stageIds, tableOf, trayMs } from './table-of-visits.ts';

/** The chance of a false alarm that the list states. */
const falseAlarm = 0.05;

export function calibrate({ seed, shops }: Simulation): readonly CalibrationRow[] {
  return [
    ...quiet({ seed, shops }),
    ...doubled({ seed: seed + 1, shops }),
    ...doubledOnPlanks({ seed: seed + 2, shops: Math.ceil(shops / 10) }),
  ];
}

/** Shops of all ages in which nothing changes; in every other one trays differ by nature. */
function quiet({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const random = seededRandom(seed);
  const lists = Array.from({ length: shops }, (_, shop) => {
    const planks = shop % 2 === 1;
    const trays = 60 + Math.floor(121 * random());
    const table = tableOf(visitsOf(simulatedBenches({ planks, random }), { trays, random }));
    return { planks, ...studySignals(table, { random }) };
  });
  const row = (id: string, what: string, of: typeof lists) =>
    calibrationRow({
      ...{ id, what, band: [0, falseAlarm], shops: of.length },
      value: meanOf(of.map(({ signals }) => (signals.length > 0 ? 1 : 0))),
    });
  return [
    row(
      'signals-quiet',
      `no change, 60 to 180 trays: share of shops whose list shows anything at one look; stated: ${falseAlarm}`,
      lists,
    ),
    row(
      'signals-quiet-planks',
      'the same, of those whose trays differ by nature',
      lists.filter(({ planks }) => planks),
    ),
    calibrationRow({
      id: 'signals-watched',
      what: 'the same: series with pieces enough for a signal, on average',
      value: meanOf(lists.map(({ watched }) => watched)),
      ...{ band: null, shops },
    }),
  ];
}

/** Trays before the rate doubles, trays that are made then, and those between two looks at the list. */
const [before, since, look] = [222, 160, 20];
/** The number of pieces since the change that is stated, and the share of shops that shall have found it by then. */
const stated = { pieces: 1500, share: 0.7 };
const scene = 'after 2000 pieces a stage that scraps 5 % scraps 10 %, of all woods';

function doubled({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const waited = waitedFor({ seed, shops, planks: false });
  const row = (id: string, what: string, value: number, band: CalibrationRow['band'] = null) =>
    calibrationRow({ id, what, value, band, shops });
  return [
    row(
      'signals-doubled',
      `${scene}: share of shops that find it within ${stated.pieces} pieces, looking every 180`,
      foundWithin(waited, stated.pieces),
      [stated.share, 1],
    ),
    row('signals-doubled-750', 'the same, within half of that', foundWithin(waited, stated.pieces / 2)),
    ...[0.1, 0.5, 0.9].map((share) =>
      row(
        `signals-doubled-${100 * share}%`,
        `the same: pieces of that stage until ${100 * share} % of the shops find it`,
        quantileOf(waited, share),
      ),
    ),
  ];
}

function doubledOnPlanks({ seed, shops }: Simulation): readonly CalibrationRow[] {
  const waited = waitedFor({ seed, shops, planks: true });
  return [
    calibrationRow({
      id: 'signals-doubled-planks',
      what: `${scene}, and trays differ by nature: share that find it within ${stated.pieces} pieces`,
      value: foundWithin(waited, stated.pieces),
      ...{ band: null, shops },
    }),
  ];
}

function waitedFor({ seed, shops, planks }: Simulation & { planks: boolean }): readonly number[] {
  const random = seededRandom(seed);
  return Array.from({ length: shops }, () => piecesUntilFound({ planks, random }));
}

function foundWithin(waited: readonly number[], most: number): number {
  return meanOf(waited.map((pieces) => (pieces <= most ? 1 : 0)));
}

/** Pieces of the stage that has changed, from then until a signal of it; infinite when there was none. */
function piecesUntilFound({ planks, random }: { planks: boolean; random: Random }): number {
  const shop = simulatedBenches({ planks, random });
  const scrap = { chances: Array.from({ length: woods }, () => 0.05), scrapped: 1 };
  const visits = visitsOf(
    { planks, flaws: [[scrap], ...shop.flaws.slice(1)] },
    {
      ...{ trays: before + since, random },
      times: (stage, tray) => (stage === 0 && tray >= before ? 2 : 1),
    },
  );
  const table = tableOf(visits);
  const changed = visits.filter(({ stage, tray }) => stage === 0 && tray >= before);
  for (let now = before + look; now <= before + since; now += look) {
    const { signals } = studySignals(table, { random, filter: { before: now * trayMs } });
    if (signals.some(({ series, direction }) => series.stage === stageIds[0] && direction === 'worse'))
      return changed.reduce((sum, { at, pieces }) => sum + (at < now ? pieces : 0), 0);
  }
  return Number.POSITIVE_INFINITY;
}
