import { describe, expect, test } from 'vitest';
import type { ShopDay } from '../../../src/domain/log/ids.ts';
import type { LogToStudy } from '../../../src/domain/study/log-of-taps.ts';
import { type StudyQuestions, studyOf } from '../../../src/domain/study/study.ts';
import { studyDesk } from '../../../src/domain/study/study-desk.ts';
import { aWorkshop, scrapped } from '../../support/a-shop.ts';
import { testRoutes as routes, studied } from '../../support/study-makers.ts';
import { person } from '../../support/workshop.ts';

const questions: StudyQuestions = { routes, filter: {}, comparison: null, answered: [], charted: null };

/** Monday: Edda bores three of ash in 2 minutes each. Tuesday: Odo, in doubt of the clock, blows one in 4 minutes. */
function twoDays() {
  const shop = aWorkshop();
  const tray = shop.tray('ash-copper', 6);
  shop.by('edda');
  shop.pace(6 * 60_000);
  shop.pass(tray, 'bore', { pieces: 3 });
  shop.later(24 * 60);
  shop.by('odo');
  shop.pace(4 * 60_000);
  shop.doubt('doubtful');
  shop.flaw(tray, 'bore', { why: 'blown', outcome: scrapped() });
  return shop;
}

describe('a study', () => {
  test('answers every question on the pieces that the filter lets through', () => {
    const study = studyOf(studied(twoDays().log), questions);
    expect(study.reach).toEqual({
      ...{ judged: 4, doubtful: 1, days: { first: '2026-03-02', last: '2026-03-03' } },
    });
    expect(study.species[0]?.finished.soFar?.survival).toBe(0.75);
    expect(study.variants[0]?.group).toBe('ash-copper');
    expect(study.comparison).toBeNull();
    expect(study.flaws).toMatchObject({
      pieces: 1,
      minutes: { scrapped: expect.closeTo(2.5, 1), again: 0, partly: 0 },
    });
    expect(study.times).toMatchObject([{ stage: 'bore', species: 'ash', of: 'work', time: { pieces: 4 } }]);
    expect(study.heat).toMatchObject([{ stage: 'bore', species: 'ash', judged: 4, flawed: 1 }]);
    expect(study.worked.weeks).toEqual([{ day: '2026-03-02', stage: 'bore', minutes: 10 }]);
    expect(study.worked.days).toHaveLength(2);
    expect(study.scrappedTime).toEqual({
      ...{ scrapped: expect.closeTo(2.5, 1), all: expect.closeTo(10, 0), share: 0.25 },
    });
  });

  test('of one day has its pieces, with the usual minutes of the shop and the comparison as it was asked for', () => {
    const comparison = { a: { person: person.edda }, b: { person: person.odo } };
    const filter = { from: '2026-03-03' as ShopDay };
    const study = studyOf(studied(twoDays().log), { ...questions, filter, comparison });
    expect(study.reach).toMatchObject({ judged: 1, days: { first: '2026-03-03', last: '2026-03-03' } });
    expect(study.species[0]?.finished.soFar?.survival).toBe(0);
    expect(study.flaws.minutes.scrapped).toBeCloseTo(2.5, 1);
    expect(study.worked.days).toEqual([{ day: '2026-03-03', stage: 'bore', minutes: 4 }]);
    expect(study.comparison?.[0]?.clean).toMatchObject({ a: { k: 3, n: 3 }, b: { k: 0, n: 1 } });
  });

  test('has at most two months of days, the newest, and all weeks', () => {
    const shop = aWorkshop();
    const tray = shop.tray('ash-copper', 100);
    shop.pace(60_000);
    for (let day = 0; day < 70; day += 1) {
      shop.pass(tray, 'bore');
      shop.later(24 * 60 - 1);
    }
    const { worked } = studyOf(studied(shop.log), questions);
    expect(worked.days).toHaveLength(62);
    expect(worked.days.at(-1)?.day).toBe('2026-05-10');
    expect(worked.weeks).toHaveLength(10);
  });

  test('of nothing is empty', () => {
    const study = studyOf(studied([]), { ...questions, comparison: { a: {}, b: {} } });
    expect(study).toEqual({
      ...{
        flow: {
          days: [],
          stages: [],
          finished: { first: [], second: [] },
          scrapped: [],
          before: { finished: 0, scrapped: 0 },
        },
        reach: { judged: 0, doubtful: 0, days: null },
        species: [],
        variants: [],
        comparison: [],
        heat: [],
      },
      flaws: { reasons: [], pieces: 0, minutes: { scrapped: 0, again: 0, partly: 0 } },
      ...{ signals: { signals: [], falseAlarm: 0.05, watched: 0 }, times: [], learning: [] },
      charted: null,
      worked: { days: [], weeks: [] },
      scrappedTime: { scrapped: 0, all: 0, share: undefined },
    });
  });

  test('is plain data that passes between threads', () => {
    const study = studyOf(studied(twoDays().log), questions);
    expect(structuredClone(study)).toEqual(study);
  });
});

test('a desk reads a log once for all questions on it, and anew when it has grown', async () => {
  const desk = studyDesk();
  const shop = twoDays();
  const reads: number[] = [];
  const read = async (): Promise<LogToStudy> => {
    reads.push(shop.log.length);
    return { runs: [], events: shop.log };
  };
  const size = shop.log.length;
  const first = await desk({ subject: 'study', questions, size }, read);
  expect([first.asOf, first.study.reach.judged]).toEqual([size, 4]);
  const ofOdo = await desk(
    { subject: 'study', questions: { ...questions, filter: { person: person.odo } }, size },
    read,
  );
  expect([ofOdo.asOf, ofOdo.study.reach.judged, reads]).toEqual([size, 1, [size]]);
  shop.act({ kind: 'end-spell', stage: routes.stages[0] ?? ('' as never) });
  expect((await desk({ subject: 'study', questions, size: size + 1 }, read)).asOf).toBe(size + 1);
  await expect(
    desk({ subject: 'study', questions, size: 0 }, () => Promise.reject(new Error('no disk'))),
  ).rejects.toThrow('no disk');
  // What failed is not kept.
  expect((await desk({ subject: 'study', questions, size: 0 }, read)).asOf).toBe(size + 1);
});
